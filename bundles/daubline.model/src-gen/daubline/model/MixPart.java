/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mix Part</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One part of the recipe of a mix, by mass or by volume; bulk density in kg/m³ where it is by volume.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.MixPart#getPart <em>Part</em>}</li>
 *   <li>{@link daubline.model.MixPart#getLot <em>Lot</em>}</li>
 *   <li>{@link daubline.model.MixPart#isByVolume <em>By Volume</em>}</li>
 *   <li>{@link daubline.model.MixPart#getBulkDensity <em>Bulk Density</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getMixPart()
 * @model
 * @generated
 */
public interface MixPart extends Reading {
	/**
	 * Returns the value of the '<em><b>Part</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Part</em>' attribute.
	 * @see #setPart(String)
	 * @see daubline.model.ModelPackage#getMixPart_Part()
	 * @model
	 * @generated
	 */
	String getPart();

	/**
	 * Sets the value of the '{@link daubline.model.MixPart#getPart <em>Part</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Part</em>' attribute.
	 * @see #getPart()
	 * @generated
	 */
	void setPart(String value);

	/**
	 * Returns the value of the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lot</em>' reference.
	 * @see #setLot(Lot)
	 * @see daubline.model.ModelPackage#getMixPart_Lot()
	 * @model
	 * @generated
	 */
	Lot getLot();

	/**
	 * Sets the value of the '{@link daubline.model.MixPart#getLot <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot</em>' reference.
	 * @see #getLot()
	 * @generated
	 */
	void setLot(Lot value);

	/**
	 * Returns the value of the '<em><b>By Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By Volume</em>' attribute.
	 * @see #setByVolume(boolean)
	 * @see daubline.model.ModelPackage#getMixPart_ByVolume()
	 * @model
	 * @generated
	 */
	boolean isByVolume();

	/**
	 * Sets the value of the '{@link daubline.model.MixPart#isByVolume <em>By Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By Volume</em>' attribute.
	 * @see #isByVolume()
	 * @generated
	 */
	void setByVolume(boolean value);

	/**
	 * Returns the value of the '<em><b>Bulk Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bulk Density</em>' attribute.
	 * @see #setBulkDensity(Double)
	 * @see daubline.model.ModelPackage#getMixPart_BulkDensity()
	 * @model
	 * @generated
	 */
	Double getBulkDensity();

	/**
	 * Sets the value of the '{@link daubline.model.MixPart#getBulkDensity <em>Bulk Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bulk Density</em>' attribute.
	 * @see #getBulkDensity()
	 * @generated
	 */
	void setBulkDensity(Double value);

} // MixPart
