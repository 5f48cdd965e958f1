/**
 */
package daubline.model;

import daubline.base.Material;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Charge Item</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One material of a charge; its mass is the reading.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.ChargeItem#getMaterial <em>Material</em>}</li>
 *   <li>{@link daubline.model.ChargeItem#getLot <em>Lot</em>}</li>
 *   <li>{@link daubline.model.ChargeItem#getCount <em>Count</em>}</li>
 *   <li>{@link daubline.model.ChargeItem#getUnitMass <em>Unit Mass</em>}</li>
 *   <li>{@link daubline.model.ChargeItem#getMeasure <em>Measure</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getChargeItem()
 * @model
 * @generated
 */
public interface ChargeItem extends Reading {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(Material)
	 * @see daubline.model.ModelPackage#getChargeItem_Material()
	 * @model dataType="daubline.model.Material"
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link daubline.model.ChargeItem#getMaterial <em>Material</em>}' attribute.
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
	 * @see daubline.model.ModelPackage#getChargeItem_Lot()
	 * @model
	 * @generated
	 */
	Lot getLot();

	/**
	 * Sets the value of the '{@link daubline.model.ChargeItem#getLot <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot</em>' reference.
	 * @see #getLot()
	 * @generated
	 */
	void setLot(Lot value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(Integer)
	 * @see daubline.model.ModelPackage#getChargeItem_Count()
	 * @model
	 * @generated
	 */
	Integer getCount();

	/**
	 * Sets the value of the '{@link daubline.model.ChargeItem#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(Integer value);

	/**
	 * Returns the value of the '<em><b>Unit Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit Mass</em>' attribute.
	 * @see #setUnitMass(Double)
	 * @see daubline.model.ModelPackage#getChargeItem_UnitMass()
	 * @model
	 * @generated
	 */
	Double getUnitMass();

	/**
	 * Sets the value of the '{@link daubline.model.ChargeItem#getUnitMass <em>Unit Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Mass</em>' attribute.
	 * @see #getUnitMass()
	 * @generated
	 */
	void setUnitMass(Double value);

	/**
	 * Returns the value of the '<em><b>Measure</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measure</em>' reference.
	 * @see #setMeasure(Measure)
	 * @see daubline.model.ModelPackage#getChargeItem_Measure()
	 * @model
	 * @generated
	 */
	Measure getMeasure();

	/**
	 * Sets the value of the '{@link daubline.model.ChargeItem#getMeasure <em>Measure</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measure</em>' reference.
	 * @see #getMeasure()
	 * @generated
	 */
	void setMeasure(Measure value);

} // ChargeItem
