/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Hazard</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One line of the risk assessment.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Hazard#getWho <em>Who</em>}</li>
 *   <li>{@link daubline.model.Hazard#getControl <em>Control</em>}</li>
 *   <li>{@link daubline.model.Hazard#getOwner <em>Owner</em>}</li>
 *   <li>{@link daubline.model.Hazard#getReviewOn <em>Review On</em>}</li>
 *   <li>{@link daubline.model.Hazard#getNotApplicableBecause <em>Not Applicable Because</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getHazard()
 * @model
 * @generated
 */
public interface Hazard extends Named {
	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see daubline.model.ModelPackage#getHazard_Who()
	 * @model
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link daubline.model.Hazard#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

	/**
	 * Returns the value of the '<em><b>Control</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Control</em>' attribute.
	 * @see #setControl(String)
	 * @see daubline.model.ModelPackage#getHazard_Control()
	 * @model
	 * @generated
	 */
	String getControl();

	/**
	 * Sets the value of the '{@link daubline.model.Hazard#getControl <em>Control</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Control</em>' attribute.
	 * @see #getControl()
	 * @generated
	 */
	void setControl(String value);

	/**
	 * Returns the value of the '<em><b>Owner</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Owner</em>' attribute.
	 * @see #setOwner(String)
	 * @see daubline.model.ModelPackage#getHazard_Owner()
	 * @model
	 * @generated
	 */
	String getOwner();

	/**
	 * Sets the value of the '{@link daubline.model.Hazard#getOwner <em>Owner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Owner</em>' attribute.
	 * @see #getOwner()
	 * @generated
	 */
	void setOwner(String value);

	/**
	 * Returns the value of the '<em><b>Review On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Review On</em>' attribute.
	 * @see #setReviewOn(String)
	 * @see daubline.model.ModelPackage#getHazard_ReviewOn()
	 * @model
	 * @generated
	 */
	String getReviewOn();

	/**
	 * Sets the value of the '{@link daubline.model.Hazard#getReviewOn <em>Review On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Review On</em>' attribute.
	 * @see #getReviewOn()
	 * @generated
	 */
	void setReviewOn(String value);

	/**
	 * Returns the value of the '<em><b>Not Applicable Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Not Applicable Because</em>' attribute.
	 * @see #setNotApplicableBecause(String)
	 * @see daubline.model.ModelPackage#getHazard_NotApplicableBecause()
	 * @model
	 * @generated
	 */
	String getNotApplicableBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Hazard#getNotApplicableBecause <em>Not Applicable Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Not Applicable Because</em>' attribute.
	 * @see #getNotApplicableBecause()
	 * @generated
	 */
	void setNotApplicableBecause(String value);

} // Hazard
