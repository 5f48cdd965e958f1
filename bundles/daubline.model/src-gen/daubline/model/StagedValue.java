/**
 */
package daubline.model;

import daubline.base.Stage;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Staged Value</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One value of a trial or build at one stage: planned, as built or as fired.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.StagedValue#getStage <em>Stage</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getStagedValue()
 * @model
 * @generated
 */
public interface StagedValue extends Reading {
	/**
	 * Returns the value of the '<em><b>Stage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stage</em>' attribute.
	 * @see #setStage(Stage)
	 * @see daubline.model.ModelPackage#getStagedValue_Stage()
	 * @model dataType="daubline.model.Stage"
	 * @generated
	 */
	Stage getStage();

	/**
	 * Sets the value of the '{@link daubline.model.StagedValue#getStage <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stage</em>' attribute.
	 * @see #getStage()
	 * @generated
	 */
	void setStage(Stage value);

} // StagedValue
