/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Charge</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Ore, fuel or addition put in at one time.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Charge#getItems <em>Items</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getCharge()
 * @model
 * @generated
 */
public interface Charge extends LogEntry {
	/**
	 * Returns the value of the '<em><b>Items</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.ChargeItem}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Items</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getCharge_Items()
	 * @model containment="true"
	 * @generated
	 */
	EList<ChargeItem> getItems();

} // Charge
