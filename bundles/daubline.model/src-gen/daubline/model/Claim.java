/**
 */
package daubline.model;


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

} // Claim
