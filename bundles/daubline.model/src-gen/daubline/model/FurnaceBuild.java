/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Furnace Build</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One furnace as it was built.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.FurnaceBuild#getReconstruction <em>Reconstruction</em>}</li>
 *   <li>{@link daubline.model.FurnaceBuild#getBuiltOn <em>Built On</em>}</li>
 *   <li>{@link daubline.model.FurnaceBuild#getLots <em>Lots</em>}</li>
 *   <li>{@link daubline.model.FurnaceBuild#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.FurnaceBuild#getLog <em>Log</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getFurnaceBuild()
 * @model
 * @generated
 */
public interface FurnaceBuild extends Named {
	/**
	 * Returns the value of the '<em><b>Reconstruction</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reconstruction</em>' reference.
	 * @see #setReconstruction(Reconstruction)
	 * @see daubline.model.ModelPackage#getFurnaceBuild_Reconstruction()
	 * @model
	 * @generated
	 */
	Reconstruction getReconstruction();

	/**
	 * Sets the value of the '{@link daubline.model.FurnaceBuild#getReconstruction <em>Reconstruction</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reconstruction</em>' reference.
	 * @see #getReconstruction()
	 * @generated
	 */
	void setReconstruction(Reconstruction value);

	/**
	 * Returns the value of the '<em><b>Built On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Built On</em>' attribute.
	 * @see #setBuiltOn(String)
	 * @see daubline.model.ModelPackage#getFurnaceBuild_BuiltOn()
	 * @model
	 * @generated
	 */
	String getBuiltOn();

	/**
	 * Sets the value of the '{@link daubline.model.FurnaceBuild#getBuiltOn <em>Built On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Built On</em>' attribute.
	 * @see #getBuiltOn()
	 * @generated
	 */
	void setBuiltOn(String value);

	/**
	 * Returns the value of the '<em><b>Lots</b></em>' reference list.
	 * The list contents are of type {@link daubline.model.Lot}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lots</em>' reference list.
	 * @see daubline.model.ModelPackage#getFurnaceBuild_Lots()
	 * @model
	 * @generated
	 */
	EList<Lot> getLots();

	/**
	 * Returns the value of the '<em><b>Values</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.StagedValue}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Values</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getFurnaceBuild_Values()
	 * @model containment="true"
	 * @generated
	 */
	EList<StagedValue> getValues();

	/**
	 * Returns the value of the '<em><b>Log</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.LogEntry}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Log</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getFurnaceBuild_Log()
	 * @model containment="true"
	 * @generated
	 */
	EList<LogEntry> getLog();

} // FurnaceBuild
