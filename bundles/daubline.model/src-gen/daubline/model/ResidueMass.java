/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Residue Mass</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The mass of one residue class.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.ResidueMass#getResidueClass <em>Residue Class</em>}</li>
 *   <li>{@link daubline.model.ResidueMass#getCount <em>Count</em>}</li>
 *   <li>{@link daubline.model.ResidueMass#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getResidueMass()
 * @model
 * @generated
 */
public interface ResidueMass extends Reading {
	/**
	 * Returns the value of the '<em><b>Residue Class</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Residue Class</em>' reference.
	 * @see #setResidueClass(ResidueClass)
	 * @see daubline.model.ModelPackage#getResidueMass_ResidueClass()
	 * @model
	 * @generated
	 */
	ResidueClass getResidueClass();

	/**
	 * Sets the value of the '{@link daubline.model.ResidueMass#getResidueClass <em>Residue Class</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Residue Class</em>' reference.
	 * @see #getResidueClass()
	 * @generated
	 */
	void setResidueClass(ResidueClass value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(Integer)
	 * @see daubline.model.ModelPackage#getResidueMass_Count()
	 * @model
	 * @generated
	 */
	Integer getCount();

	/**
	 * Sets the value of the '{@link daubline.model.ResidueMass#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(Integer value);

	/**
	 * Returns the value of the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blindly</em>' reference.
	 * @see #setBlindly(BlindRecording)
	 * @see daubline.model.ModelPackage#getResidueMass_Blindly()
	 * @model
	 * @generated
	 */
	BlindRecording getBlindly();

	/**
	 * Sets the value of the '{@link daubline.model.ResidueMass#getBlindly <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blindly</em>' reference.
	 * @see #getBlindly()
	 * @generated
	 */
	void setBlindly(BlindRecording value);

} // ResidueMass
