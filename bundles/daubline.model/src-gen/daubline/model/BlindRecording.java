/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Blind Recording</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A time in which somebody recorded remains while the window showed neither run nor evidence; without an end it is still on. Instants as ISO 8601 in UTC.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.BlindRecording#getBy <em>By</em>}</li>
 *   <li>{@link daubline.model.BlindRecording#getBegun <em>Begun</em>}</li>
 *   <li>{@link daubline.model.BlindRecording#getEnded <em>Ended</em>}</li>
 *   <li>{@link daubline.model.BlindRecording#getEndedBy <em>Ended By</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getBlindRecording()
 * @model
 * @generated
 */
public interface BlindRecording extends Identified {
	/**
	 * Returns the value of the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' reference.
	 * @see #setBy(Person)
	 * @see daubline.model.ModelPackage#getBlindRecording_By()
	 * @model
	 * @generated
	 */
	Person getBy();

	/**
	 * Sets the value of the '{@link daubline.model.BlindRecording#getBy <em>By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' reference.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(Person value);

	/**
	 * Returns the value of the '<em><b>Begun</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Begun</em>' attribute.
	 * @see #setBegun(String)
	 * @see daubline.model.ModelPackage#getBlindRecording_Begun()
	 * @model
	 * @generated
	 */
	String getBegun();

	/**
	 * Sets the value of the '{@link daubline.model.BlindRecording#getBegun <em>Begun</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Begun</em>' attribute.
	 * @see #getBegun()
	 * @generated
	 */
	void setBegun(String value);

	/**
	 * Returns the value of the '<em><b>Ended</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ended</em>' attribute.
	 * @see #setEnded(String)
	 * @see daubline.model.ModelPackage#getBlindRecording_Ended()
	 * @model
	 * @generated
	 */
	String getEnded();

	/**
	 * Sets the value of the '{@link daubline.model.BlindRecording#getEnded <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ended</em>' attribute.
	 * @see #getEnded()
	 * @generated
	 */
	void setEnded(String value);

	/**
	 * Returns the value of the '<em><b>Ended By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ended By</em>' reference.
	 * @see #setEndedBy(Person)
	 * @see daubline.model.ModelPackage#getBlindRecording_EndedBy()
	 * @model
	 * @generated
	 */
	Person getEndedBy();

	/**
	 * Sets the value of the '{@link daubline.model.BlindRecording#getEndedBy <em>Ended By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ended By</em>' reference.
	 * @see #getEndedBy()
	 * @generated
	 */
	void setEndedBy(Person value);

} // BlindRecording
