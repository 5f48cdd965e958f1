/**
 */
package daubline.model;

import daubline.base.Material;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Measure</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A scoop, bucket or basket that materials are counted with; its weighings say what it holds.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Measure#getMaterial <em>Material</em>}</li>
 *   <li>{@link daubline.model.Measure#getLot <em>Lot</em>}</li>
 *   <li>{@link daubline.model.Measure#getWeighings <em>Weighings</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getMeasure()
 * @model
 * @generated
 */
public interface Measure extends Named {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(Material)
	 * @see daubline.model.ModelPackage#getMeasure_Material()
	 * @model dataType="daubline.model.Material"
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link daubline.model.Measure#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lot</em>' reference.
	 * @see #setLot(Lot)
	 * @see daubline.model.ModelPackage#getMeasure_Lot()
	 * @model
	 * @generated
	 */
	Lot getLot();

	/**
	 * Sets the value of the '{@link daubline.model.Measure#getLot <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot</em>' reference.
	 * @see #getLot()
	 * @generated
	 */
	void setLot(Lot value);

	/**
	 * Returns the value of the '<em><b>Weighings</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Weighings</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getMeasure_Weighings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reading> getWeighings();

} // Measure
