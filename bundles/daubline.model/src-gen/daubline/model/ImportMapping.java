/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Import Mapping</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How the columns of one kind of file are read; saved so that the next file of that kind needs no questions.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.ImportMapping#getTarget <em>Target</em>}</li>
 *   <li>{@link daubline.model.ImportMapping#getSettings <em>Settings</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getImportMapping()
 * @model
 * @generated
 */
public interface ImportMapping extends Named {
	/**
	 * Returns the value of the '<em><b>Target</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Target</em>' attribute.
	 * @see #setTarget(String)
	 * @see daubline.model.ModelPackage#getImportMapping_Target()
	 * @model
	 * @generated
	 */
	String getTarget();

	/**
	 * Sets the value of the '{@link daubline.model.ImportMapping#getTarget <em>Target</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Target</em>' attribute.
	 * @see #getTarget()
	 * @generated
	 */
	void setTarget(String value);

	/**
	 * Returns the value of the '<em><b>Settings</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Setting}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Settings</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getImportMapping_Settings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Setting> getSettings();

} // ImportMapping
