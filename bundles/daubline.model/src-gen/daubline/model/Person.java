/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Person</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Somebody who reads, burns, records or helps; shown in public output only by consent.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Person#getRole <em>Role</em>}</li>
 *   <li>{@link daubline.model.Person#getSmeltsBefore <em>Smelts Before</em>}</li>
 *   <li>{@link daubline.model.Person#isMayPublishName <em>May Publish Name</em>}</li>
 *   <li>{@link daubline.model.Person#isMayPublishPhotograph <em>May Publish Photograph</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getPerson()
 * @model
 * @generated
 */
public interface Person extends Named {
	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see #setRole(String)
	 * @see daubline.model.ModelPackage#getPerson_Role()
	 * @model
	 * @generated
	 */
	String getRole();

	/**
	 * Sets the value of the '{@link daubline.model.Person#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see #getRole()
	 * @generated
	 */
	void setRole(String value);

	/**
	 * Returns the value of the '<em><b>Smelts Before</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Smelts Before</em>' attribute.
	 * @see #setSmeltsBefore(Integer)
	 * @see daubline.model.ModelPackage#getPerson_SmeltsBefore()
	 * @model
	 * @generated
	 */
	Integer getSmeltsBefore();

	/**
	 * Sets the value of the '{@link daubline.model.Person#getSmeltsBefore <em>Smelts Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Smelts Before</em>' attribute.
	 * @see #getSmeltsBefore()
	 * @generated
	 */
	void setSmeltsBefore(Integer value);

	/**
	 * Returns the value of the '<em><b>May Publish Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>May Publish Name</em>' attribute.
	 * @see #setMayPublishName(boolean)
	 * @see daubline.model.ModelPackage#getPerson_MayPublishName()
	 * @model
	 * @generated
	 */
	boolean isMayPublishName();

	/**
	 * Sets the value of the '{@link daubline.model.Person#isMayPublishName <em>May Publish Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>May Publish Name</em>' attribute.
	 * @see #isMayPublishName()
	 * @generated
	 */
	void setMayPublishName(boolean value);

	/**
	 * Returns the value of the '<em><b>May Publish Photograph</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>May Publish Photograph</em>' attribute.
	 * @see #setMayPublishPhotograph(boolean)
	 * @see daubline.model.ModelPackage#getPerson_MayPublishPhotograph()
	 * @model
	 * @generated
	 */
	boolean isMayPublishPhotograph();

	/**
	 * Sets the value of the '{@link daubline.model.Person#isMayPublishPhotograph <em>May Publish Photograph</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>May Publish Photograph</em>' attribute.
	 * @see #isMayPublishPhotograph()
	 * @generated
	 */
	void setMayPublishPhotograph(boolean value);

} // Person
