/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Factor</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A variable that the series sets on purpose.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Factor#getVariable <em>Variable</em>}</li>
 *   <li>{@link daubline.model.Factor#getLevels <em>Levels</em>}</li>
 *   <li>{@link daubline.model.Factor#isHardToChange <em>Hard To Change</em>}</li>
 *   <li>{@link daubline.model.Factor#isDaily <em>Daily</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getFactor()
 * @model
 * @generated
 */
public interface Factor extends Identified {
	/**
	 * Returns the value of the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Variable</em>' attribute.
	 * @see #setVariable(String)
	 * @see daubline.model.ModelPackage#getFactor_Variable()
	 * @model
	 * @generated
	 */
	String getVariable();

	/**
	 * Sets the value of the '{@link daubline.model.Factor#getVariable <em>Variable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Variable</em>' attribute.
	 * @see #getVariable()
	 * @generated
	 */
	void setVariable(String value);

	/**
	 * Returns the value of the '<em><b>Levels</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Levels</em>' attribute.
	 * @see #setLevels(String)
	 * @see daubline.model.ModelPackage#getFactor_Levels()
	 * @model
	 * @generated
	 */
	String getLevels();

	/**
	 * Sets the value of the '{@link daubline.model.Factor#getLevels <em>Levels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Levels</em>' attribute.
	 * @see #getLevels()
	 * @generated
	 */
	void setLevels(String value);

	/**
	 * Returns the value of the '<em><b>Hard To Change</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hard To Change</em>' attribute.
	 * @see #setHardToChange(boolean)
	 * @see daubline.model.ModelPackage#getFactor_HardToChange()
	 * @model
	 * @generated
	 */
	boolean isHardToChange();

	/**
	 * Sets the value of the '{@link daubline.model.Factor#isHardToChange <em>Hard To Change</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hard To Change</em>' attribute.
	 * @see #isHardToChange()
	 * @generated
	 */
	void setHardToChange(boolean value);

	/**
	 * Returns the value of the '<em><b>Daily</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Daily</em>' attribute.
	 * @see #setDaily(boolean)
	 * @see daubline.model.ModelPackage#getFactor_Daily()
	 * @model
	 * @generated
	 */
	boolean isDaily();

	/**
	 * Sets the value of the '{@link daubline.model.Factor#isDaily <em>Daily</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Daily</em>' attribute.
	 * @see #isDaily()
	 * @generated
	 */
	void setDaily(boolean value);

} // Factor
