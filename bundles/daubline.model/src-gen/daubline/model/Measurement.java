/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Measurement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A length taken from a picture, with its two points in pixels and the standard uncertainty with which each was set; the scale is the one whose length is known.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Measurement#getX1 <em>X1</em>}</li>
 *   <li>{@link daubline.model.Measurement#getY1 <em>Y1</em>}</li>
 *   <li>{@link daubline.model.Measurement#getX2 <em>X2</em>}</li>
 *   <li>{@link daubline.model.Measurement#getY2 <em>Y2</em>}</li>
 *   <li>{@link daubline.model.Measurement#isScale <em>Scale</em>}</li>
 *   <li>{@link daubline.model.Measurement#getPointing <em>Pointing</em>}</li>
 *   <li>{@link daubline.model.Measurement#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getMeasurement()
 * @model
 * @generated
 */
public interface Measurement extends Reading {
	/**
	 * Returns the value of the '<em><b>X1</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>X1</em>' attribute.
	 * @see #setX1(Double)
	 * @see daubline.model.ModelPackage#getMeasurement_X1()
	 * @model
	 * @generated
	 */
	Double getX1();

	/**
	 * Sets the value of the '{@link daubline.model.Measurement#getX1 <em>X1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>X1</em>' attribute.
	 * @see #getX1()
	 * @generated
	 */
	void setX1(Double value);

	/**
	 * Returns the value of the '<em><b>Y1</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Y1</em>' attribute.
	 * @see #setY1(Double)
	 * @see daubline.model.ModelPackage#getMeasurement_Y1()
	 * @model
	 * @generated
	 */
	Double getY1();

	/**
	 * Sets the value of the '{@link daubline.model.Measurement#getY1 <em>Y1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Y1</em>' attribute.
	 * @see #getY1()
	 * @generated
	 */
	void setY1(Double value);

	/**
	 * Returns the value of the '<em><b>X2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>X2</em>' attribute.
	 * @see #setX2(Double)
	 * @see daubline.model.ModelPackage#getMeasurement_X2()
	 * @model
	 * @generated
	 */
	Double getX2();

	/**
	 * Sets the value of the '{@link daubline.model.Measurement#getX2 <em>X2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>X2</em>' attribute.
	 * @see #getX2()
	 * @generated
	 */
	void setX2(Double value);

	/**
	 * Returns the value of the '<em><b>Y2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Y2</em>' attribute.
	 * @see #setY2(Double)
	 * @see daubline.model.ModelPackage#getMeasurement_Y2()
	 * @model
	 * @generated
	 */
	Double getY2();

	/**
	 * Sets the value of the '{@link daubline.model.Measurement#getY2 <em>Y2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Y2</em>' attribute.
	 * @see #getY2()
	 * @generated
	 */
	void setY2(Double value);

	/**
	 * Returns the value of the '<em><b>Scale</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Scale</em>' attribute.
	 * @see #setScale(boolean)
	 * @see daubline.model.ModelPackage#getMeasurement_Scale()
	 * @model
	 * @generated
	 */
	boolean isScale();

	/**
	 * Sets the value of the '{@link daubline.model.Measurement#isScale <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scale</em>' attribute.
	 * @see #isScale()
	 * @generated
	 */
	void setScale(boolean value);

	/**
	 * Returns the value of the '<em><b>Pointing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pointing</em>' attribute.
	 * @see #setPointing(Double)
	 * @see daubline.model.ModelPackage#getMeasurement_Pointing()
	 * @model
	 * @generated
	 */
	Double getPointing();

	/**
	 * Sets the value of the '{@link daubline.model.Measurement#getPointing <em>Pointing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pointing</em>' attribute.
	 * @see #getPointing()
	 * @generated
	 */
	void setPointing(Double value);

	/**
	 * Returns the value of the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blindly</em>' reference.
	 * @see #setBlindly(BlindRecording)
	 * @see daubline.model.ModelPackage#getMeasurement_Blindly()
	 * @model
	 * @generated
	 */
	BlindRecording getBlindly();

	/**
	 * Sets the value of the '{@link daubline.model.Measurement#getBlindly <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blindly</em>' reference.
	 * @see #getBlindly()
	 * @generated
	 */
	void setBlindly(BlindRecording value);

} // Measurement
