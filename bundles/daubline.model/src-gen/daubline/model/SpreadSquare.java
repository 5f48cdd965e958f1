/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Spread Square</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The residue in one square of the ground around a furnace; its mass is the reading. Middle of the square in m east and north of the middle of the furnace.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.SpreadSquare#getEast <em>East</em>}</li>
 *   <li>{@link daubline.model.SpreadSquare#getNorth <em>North</em>}</li>
 *   <li>{@link daubline.model.SpreadSquare#getSide <em>Side</em>}</li>
 *   <li>{@link daubline.model.SpreadSquare#getResidueClass <em>Residue Class</em>}</li>
 *   <li>{@link daubline.model.SpreadSquare#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getSpreadSquare()
 * @model
 * @generated
 */
public interface SpreadSquare extends Reading {
	/**
	 * Returns the value of the '<em><b>East</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>East</em>' attribute.
	 * @see #setEast(Double)
	 * @see daubline.model.ModelPackage#getSpreadSquare_East()
	 * @model
	 * @generated
	 */
	Double getEast();

	/**
	 * Sets the value of the '{@link daubline.model.SpreadSquare#getEast <em>East</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>East</em>' attribute.
	 * @see #getEast()
	 * @generated
	 */
	void setEast(Double value);

	/**
	 * Returns the value of the '<em><b>North</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>North</em>' attribute.
	 * @see #setNorth(Double)
	 * @see daubline.model.ModelPackage#getSpreadSquare_North()
	 * @model
	 * @generated
	 */
	Double getNorth();

	/**
	 * Sets the value of the '{@link daubline.model.SpreadSquare#getNorth <em>North</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>North</em>' attribute.
	 * @see #getNorth()
	 * @generated
	 */
	void setNorth(Double value);

	/**
	 * Returns the value of the '<em><b>Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Side</em>' attribute.
	 * @see #setSide(Double)
	 * @see daubline.model.ModelPackage#getSpreadSquare_Side()
	 * @model
	 * @generated
	 */
	Double getSide();

	/**
	 * Sets the value of the '{@link daubline.model.SpreadSquare#getSide <em>Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Side</em>' attribute.
	 * @see #getSide()
	 * @generated
	 */
	void setSide(Double value);

	/**
	 * Returns the value of the '<em><b>Residue Class</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Residue Class</em>' reference.
	 * @see #setResidueClass(ResidueClass)
	 * @see daubline.model.ModelPackage#getSpreadSquare_ResidueClass()
	 * @model
	 * @generated
	 */
	ResidueClass getResidueClass();

	/**
	 * Sets the value of the '{@link daubline.model.SpreadSquare#getResidueClass <em>Residue Class</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Residue Class</em>' reference.
	 * @see #getResidueClass()
	 * @generated
	 */
	void setResidueClass(ResidueClass value);

	/**
	 * Returns the value of the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blindly</em>' reference.
	 * @see #setBlindly(BlindRecording)
	 * @see daubline.model.ModelPackage#getSpreadSquare_Blindly()
	 * @model
	 * @generated
	 */
	BlindRecording getBlindly();

	/**
	 * Sets the value of the '{@link daubline.model.SpreadSquare#getBlindly <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blindly</em>' reference.
	 * @see #getBlindly()
	 * @generated
	 */
	void setBlindly(BlindRecording value);

} // SpreadSquare
