/**
 */
package daubline.model;

import daubline.base.Material;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Lot</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A lot of ore, charcoal, clay, flux or other material in the store.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Lot#getMaterial <em>Material</em>}</li>
 *   <li>{@link daubline.model.Lot#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link daubline.model.Lot#getOrigin <em>Origin</em>}</li>
 *   <li>{@link daubline.model.Lot#getDeliveredOn <em>Delivered On</em>}</li>
 *   <li>{@link daubline.model.Lot#getFrom <em>From</em>}</li>
 *   <li>{@link daubline.model.Lot#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.Lot#getTreatments <em>Treatments</em>}</li>
 *   <li>{@link daubline.model.Lot#getAnalyses <em>Analyses</em>}</li>
 *   <li>{@link daubline.model.Lot#getMoistureBasis <em>Moisture Basis</em>}</li>
 *   <li>{@link daubline.model.Lot#getRecipe <em>Recipe</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getLot()
 * @model
 * @generated
 */
public interface Lot extends Named {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(Material)
	 * @see daubline.model.ModelPackage#getLot_Material()
	 * @model dataType="daubline.model.Material"
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link daubline.model.Lot#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Supplier</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supplier</em>' attribute.
	 * @see #setSupplier(String)
	 * @see daubline.model.ModelPackage#getLot_Supplier()
	 * @model
	 * @generated
	 */
	String getSupplier();

	/**
	 * Sets the value of the '{@link daubline.model.Lot#getSupplier <em>Supplier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supplier</em>' attribute.
	 * @see #getSupplier()
	 * @generated
	 */
	void setSupplier(String value);

	/**
	 * Returns the value of the '<em><b>Origin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Origin</em>' attribute.
	 * @see #setOrigin(String)
	 * @see daubline.model.ModelPackage#getLot_Origin()
	 * @model
	 * @generated
	 */
	String getOrigin();

	/**
	 * Sets the value of the '{@link daubline.model.Lot#getOrigin <em>Origin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Origin</em>' attribute.
	 * @see #getOrigin()
	 * @generated
	 */
	void setOrigin(String value);

	/**
	 * Returns the value of the '<em><b>Delivered On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Delivered On</em>' attribute.
	 * @see #setDeliveredOn(String)
	 * @see daubline.model.ModelPackage#getLot_DeliveredOn()
	 * @model
	 * @generated
	 */
	String getDeliveredOn();

	/**
	 * Sets the value of the '{@link daubline.model.Lot#getDeliveredOn <em>Delivered On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Delivered On</em>' attribute.
	 * @see #getDeliveredOn()
	 * @generated
	 */
	void setDeliveredOn(String value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' reference list.
	 * The list contents are of type {@link daubline.model.Lot}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>From</em>' reference list.
	 * @see daubline.model.ModelPackage#getLot_From()
	 * @model
	 * @generated
	 */
	EList<Lot> getFrom();

	/**
	 * Returns the value of the '<em><b>Values</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Values</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getLot_Values()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reading> getValues();

	/**
	 * Returns the value of the '<em><b>Treatments</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Treatment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Treatments</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getLot_Treatments()
	 * @model containment="true"
	 * @generated
	 */
	EList<Treatment> getTreatments();

	/**
	 * Returns the value of the '<em><b>Analyses</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Analysis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Analyses</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getLot_Analyses()
	 * @model containment="true"
	 * @generated
	 */
	EList<Analysis> getAnalyses();

	/**
	 * Returns the value of the '<em><b>Moisture Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Moisture Basis</em>' attribute.
	 * @see #setMoistureBasis(String)
	 * @see daubline.model.ModelPackage#getLot_MoistureBasis()
	 * @model
	 * @generated
	 */
	String getMoistureBasis();

	/**
	 * Sets the value of the '{@link daubline.model.Lot#getMoistureBasis <em>Moisture Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Moisture Basis</em>' attribute.
	 * @see #getMoistureBasis()
	 * @generated
	 */
	void setMoistureBasis(String value);

	/**
	 * Returns the value of the '<em><b>Recipe</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.MixPart}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recipe</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getLot_Recipe()
	 * @model containment="true"
	 * @generated
	 */
	EList<MixPart> getRecipe();

} // Lot
