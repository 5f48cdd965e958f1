/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Wall Zone</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One patch of the inner wall: where it is around and up, and what the fire did to it. Clock positions from 1 to 12 with the front at 6, heights in m above the floor.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.WallZone#getClock <em>Clock</em>}</li>
 *   <li>{@link daubline.model.WallZone#getLow <em>Low</em>}</li>
 *   <li>{@link daubline.model.WallZone#getHigh <em>High</em>}</li>
 *   <li>{@link daubline.model.WallZone#getState <em>State</em>}</li>
 *   <li>{@link daubline.model.WallZone#getNote <em>Note</em>}</li>
 *   <li>{@link daubline.model.WallZone#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getWallZone()
 * @model
 * @generated
 */
public interface WallZone extends Identified {
	/**
	 * Returns the value of the '<em><b>Clock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clock</em>' attribute.
	 * @see #setClock(Integer)
	 * @see daubline.model.ModelPackage#getWallZone_Clock()
	 * @model
	 * @generated
	 */
	Integer getClock();

	/**
	 * Sets the value of the '{@link daubline.model.WallZone#getClock <em>Clock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clock</em>' attribute.
	 * @see #getClock()
	 * @generated
	 */
	void setClock(Integer value);

	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(Double)
	 * @see daubline.model.ModelPackage#getWallZone_Low()
	 * @model
	 * @generated
	 */
	Double getLow();

	/**
	 * Sets the value of the '{@link daubline.model.WallZone#getLow <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Low</em>' attribute.
	 * @see #getLow()
	 * @generated
	 */
	void setLow(Double value);

	/**
	 * Returns the value of the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>High</em>' attribute.
	 * @see #setHigh(Double)
	 * @see daubline.model.ModelPackage#getWallZone_High()
	 * @model
	 * @generated
	 */
	Double getHigh();

	/**
	 * Sets the value of the '{@link daubline.model.WallZone#getHigh <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High</em>' attribute.
	 * @see #getHigh()
	 * @generated
	 */
	void setHigh(Double value);

	/**
	 * Returns the value of the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>State</em>' attribute.
	 * @see #setState(String)
	 * @see daubline.model.ModelPackage#getWallZone_State()
	 * @model
	 * @generated
	 */
	String getState();

	/**
	 * Sets the value of the '{@link daubline.model.WallZone#getState <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State</em>' attribute.
	 * @see #getState()
	 * @generated
	 */
	void setState(String value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see daubline.model.ModelPackage#getWallZone_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link daubline.model.WallZone#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blindly</em>' reference.
	 * @see #setBlindly(BlindRecording)
	 * @see daubline.model.ModelPackage#getWallZone_Blindly()
	 * @model
	 * @generated
	 */
	BlindRecording getBlindly();

	/**
	 * Sets the value of the '{@link daubline.model.WallZone#getBlindly <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blindly</em>' reference.
	 * @see #getBlindly()
	 * @generated
	 */
	void setBlindly(BlindRecording value);

} // WallZone
