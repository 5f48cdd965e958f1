/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Remains Sheet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a trial left, recorded as though excavated.
 * <!-- end-model-doc -->
 *
 *
 * @see daubline.model.ModelPackage#getRemainsSheet()
 * @model
 * @generated
 */
public interface RemainsSheet extends Sheet {
} // RemainsSheet
