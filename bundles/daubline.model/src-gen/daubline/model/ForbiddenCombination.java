/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Forbidden Combination</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A combination of settings that must not be burnt.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.ForbiddenCombination#getConditions <em>Conditions</em>}</li>
 *   <li>{@link daubline.model.ForbiddenCombination#getBecause <em>Because</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getForbiddenCombination()
 * @model
 * @generated
 */
public interface ForbiddenCombination extends Identified {
	/**
	 * Returns the value of the '<em><b>Conditions</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Conditions</em>' attribute.
	 * @see #setConditions(String)
	 * @see daubline.model.ModelPackage#getForbiddenCombination_Conditions()
	 * @model
	 * @generated
	 */
	String getConditions();

	/**
	 * Sets the value of the '{@link daubline.model.ForbiddenCombination#getConditions <em>Conditions</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conditions</em>' attribute.
	 * @see #getConditions()
	 * @generated
	 */
	void setConditions(String value);

	/**
	 * Returns the value of the '<em><b>Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Because</em>' attribute.
	 * @see #setBecause(String)
	 * @see daubline.model.ModelPackage#getForbiddenCombination_Because()
	 * @model
	 * @generated
	 */
	String getBecause();

	/**
	 * Sets the value of the '{@link daubline.model.ForbiddenCombination#getBecause <em>Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Because</em>' attribute.
	 * @see #getBecause()
	 * @generated
	 */
	void setBecause(String value);

} // ForbiddenCombination
