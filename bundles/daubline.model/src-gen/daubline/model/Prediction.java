/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Prediction</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What was expected before the fire; locked when the trial starts.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Prediction#getStatedOn <em>Stated On</em>}</li>
 *   <li>{@link daubline.model.Prediction#isLocked <em>Locked</em>}</li>
 *   <li>{@link daubline.model.Prediction#getReconstruction <em>Reconstruction</em>}</li>
 *   <li>{@link daubline.model.Prediction#getEngine <em>Engine</em>}</li>
 *   <li>{@link daubline.model.Prediction#getRevises <em>Revises</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getPrediction()
 * @model
 * @generated
 */
public interface Prediction extends Reading {
	/**
	 * Returns the value of the '<em><b>Stated On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stated On</em>' attribute.
	 * @see #setStatedOn(String)
	 * @see daubline.model.ModelPackage#getPrediction_StatedOn()
	 * @model
	 * @generated
	 */
	String getStatedOn();

	/**
	 * Sets the value of the '{@link daubline.model.Prediction#getStatedOn <em>Stated On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stated On</em>' attribute.
	 * @see #getStatedOn()
	 * @generated
	 */
	void setStatedOn(String value);

	/**
	 * Returns the value of the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Locked</em>' attribute.
	 * @see #setLocked(boolean)
	 * @see daubline.model.ModelPackage#getPrediction_Locked()
	 * @model
	 * @generated
	 */
	boolean isLocked();

	/**
	 * Sets the value of the '{@link daubline.model.Prediction#isLocked <em>Locked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Locked</em>' attribute.
	 * @see #isLocked()
	 * @generated
	 */
	void setLocked(boolean value);

	/**
	 * Returns the value of the '<em><b>Reconstruction</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reconstruction</em>' reference.
	 * @see #setReconstruction(Reconstruction)
	 * @see daubline.model.ModelPackage#getPrediction_Reconstruction()
	 * @model
	 * @generated
	 */
	Reconstruction getReconstruction();

	/**
	 * Sets the value of the '{@link daubline.model.Prediction#getReconstruction <em>Reconstruction</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reconstruction</em>' reference.
	 * @see #getReconstruction()
	 * @generated
	 */
	void setReconstruction(Reconstruction value);

	/**
	 * Returns the value of the '<em><b>Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Engine</em>' attribute.
	 * @see #setEngine(String)
	 * @see daubline.model.ModelPackage#getPrediction_Engine()
	 * @model
	 * @generated
	 */
	String getEngine();

	/**
	 * Sets the value of the '{@link daubline.model.Prediction#getEngine <em>Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Engine</em>' attribute.
	 * @see #getEngine()
	 * @generated
	 */
	void setEngine(String value);

	/**
	 * Returns the value of the '<em><b>Revises</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Revises</em>' reference.
	 * @see #setRevises(Prediction)
	 * @see daubline.model.ModelPackage#getPrediction_Revises()
	 * @model
	 * @generated
	 */
	Prediction getRevises();

	/**
	 * Sets the value of the '{@link daubline.model.Prediction#getRevises <em>Revises</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Revises</em>' reference.
	 * @see #getRevises()
	 * @generated
	 */
	void setRevises(Prediction value);

} // Prediction
