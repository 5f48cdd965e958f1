/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Visit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A return to the weathering ruin.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Visit#getDueOn <em>Due On</em>}</li>
 *   <li>{@link daubline.model.Visit#getVisitedOn <em>Visited On</em>}</li>
 *   <li>{@link daubline.model.Visit#getNotVisitedBecause <em>Not Visited Because</em>}</li>
 *   <li>{@link daubline.model.Visit#getEndedBecause <em>Ended Because</em>}</li>
 *   <li>{@link daubline.model.Visit#getRemains <em>Remains</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getVisit()
 * @model
 * @generated
 */
public interface Visit extends Named {
	/**
	 * Returns the value of the '<em><b>Due On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Due On</em>' attribute.
	 * @see #setDueOn(String)
	 * @see daubline.model.ModelPackage#getVisit_DueOn()
	 * @model
	 * @generated
	 */
	String getDueOn();

	/**
	 * Sets the value of the '{@link daubline.model.Visit#getDueOn <em>Due On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Due On</em>' attribute.
	 * @see #getDueOn()
	 * @generated
	 */
	void setDueOn(String value);

	/**
	 * Returns the value of the '<em><b>Visited On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Visited On</em>' attribute.
	 * @see #setVisitedOn(String)
	 * @see daubline.model.ModelPackage#getVisit_VisitedOn()
	 * @model
	 * @generated
	 */
	String getVisitedOn();

	/**
	 * Sets the value of the '{@link daubline.model.Visit#getVisitedOn <em>Visited On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Visited On</em>' attribute.
	 * @see #getVisitedOn()
	 * @generated
	 */
	void setVisitedOn(String value);

	/**
	 * Returns the value of the '<em><b>Not Visited Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Not Visited Because</em>' attribute.
	 * @see #setNotVisitedBecause(String)
	 * @see daubline.model.ModelPackage#getVisit_NotVisitedBecause()
	 * @model
	 * @generated
	 */
	String getNotVisitedBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Visit#getNotVisitedBecause <em>Not Visited Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Not Visited Because</em>' attribute.
	 * @see #getNotVisitedBecause()
	 * @generated
	 */
	void setNotVisitedBecause(String value);

	/**
	 * Returns the value of the '<em><b>Ended Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ended Because</em>' attribute.
	 * @see #setEndedBecause(String)
	 * @see daubline.model.ModelPackage#getVisit_EndedBecause()
	 * @model
	 * @generated
	 */
	String getEndedBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Visit#getEndedBecause <em>Ended Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ended Because</em>' attribute.
	 * @see #getEndedBecause()
	 * @generated
	 */
	void setEndedBecause(String value);

	/**
	 * Returns the value of the '<em><b>Remains</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Remains</em>' containment reference.
	 * @see #setRemains(RemainsSheet)
	 * @see daubline.model.ModelPackage#getVisit_Remains()
	 * @model containment="true"
	 * @generated
	 */
	RemainsSheet getRemains();

	/**
	 * Sets the value of the '{@link daubline.model.Visit#getRemains <em>Remains</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remains</em>' containment reference.
	 * @see #getRemains()
	 * @generated
	 */
	void setRemains(RemainsSheet value);

} // Visit
