/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Claim</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One cited or recorded statement about one property of remains, excavated or experimental.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Claim#getPreservationLimit <em>Preservation Limit</em>}</li>
 *   <li>{@link daubline.model.Claim#getLimitBecause <em>Limit Because</em>}</li>
 *   <li>{@link daubline.model.Claim#getMeasurement <em>Measurement</em>}</li>
 *   <li>{@link daubline.model.Claim#getFormula <em>Formula</em>}</li>
 *   <li>{@link daubline.model.Claim#getInputs <em>Inputs</em>}</li>
 *   <li>{@link daubline.model.Claim#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getClaim()
 * @model
 * @generated
 */
public interface Claim extends Reading {
	/**
	 * Returns the value of the '<em><b>Preservation Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Preservation Limit</em>' attribute.
	 * @see #setPreservationLimit(Double)
	 * @see daubline.model.ModelPackage#getClaim_PreservationLimit()
	 * @model
	 * @generated
	 */
	Double getPreservationLimit();

	/**
	 * Sets the value of the '{@link daubline.model.Claim#getPreservationLimit <em>Preservation Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Preservation Limit</em>' attribute.
	 * @see #getPreservationLimit()
	 * @generated
	 */
	void setPreservationLimit(Double value);

	/**
	 * Returns the value of the '<em><b>Limit Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Limit Because</em>' attribute.
	 * @see #setLimitBecause(String)
	 * @see daubline.model.ModelPackage#getClaim_LimitBecause()
	 * @model
	 * @generated
	 */
	String getLimitBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Claim#getLimitBecause <em>Limit Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Limit Because</em>' attribute.
	 * @see #getLimitBecause()
	 * @generated
	 */
	void setLimitBecause(String value);

	/**
	 * Returns the value of the '<em><b>Measurement</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measurement</em>' reference.
	 * @see #setMeasurement(Measurement)
	 * @see daubline.model.ModelPackage#getClaim_Measurement()
	 * @model
	 * @generated
	 */
	Measurement getMeasurement();

	/**
	 * Sets the value of the '{@link daubline.model.Claim#getMeasurement <em>Measurement</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measurement</em>' reference.
	 * @see #getMeasurement()
	 * @generated
	 */
	void setMeasurement(Measurement value);

	/**
	 * Returns the value of the '<em><b>Formula</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Formula</em>' attribute.
	 * @see #setFormula(String)
	 * @see daubline.model.ModelPackage#getClaim_Formula()
	 * @model
	 * @generated
	 */
	String getFormula();

	/**
	 * Sets the value of the '{@link daubline.model.Claim#getFormula <em>Formula</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Formula</em>' attribute.
	 * @see #getFormula()
	 * @generated
	 */
	void setFormula(String value);

	/**
	 * Returns the value of the '<em><b>Inputs</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.ClaimInput}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inputs</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getClaim_Inputs()
	 * @model containment="true"
	 * @generated
	 */
	EList<ClaimInput> getInputs();

	/**
	 * Returns the value of the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blindly</em>' reference.
	 * @see #setBlindly(BlindRecording)
	 * @see daubline.model.ModelPackage#getClaim_Blindly()
	 * @model
	 * @generated
	 */
	BlindRecording getBlindly();

	/**
	 * Sets the value of the '{@link daubline.model.Claim#getBlindly <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blindly</em>' reference.
	 * @see #getBlindly()
	 * @generated
	 */
	void setBlindly(BlindRecording value);

} // Claim
