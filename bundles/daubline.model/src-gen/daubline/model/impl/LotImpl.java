/**
 */
package daubline.model.impl;

import daubline.base.Material;

import daubline.model.Analysis;
import daubline.model.Lot;
import daubline.model.MixPart;
import daubline.model.ModelPackage;
import daubline.model.Reading;
import daubline.model.Treatment;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.EObjectResolvingEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Lot</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.LotImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getOrigin <em>Origin</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getDeliveredOn <em>Delivered On</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getFrom <em>From</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getTreatments <em>Treatments</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getAnalyses <em>Analyses</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getMoistureBasis <em>Moisture Basis</em>}</li>
 *   <li>{@link daubline.model.impl.LotImpl#getRecipe <em>Recipe</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LotImpl extends NamedImpl implements Lot {
	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final Material MATERIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected Material material = MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupplier() <em>Supplier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplier()
	 * @generated
	 * @ordered
	 */
	protected static final String SUPPLIER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSupplier() <em>Supplier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplier()
	 * @generated
	 * @ordered
	 */
	protected String supplier = SUPPLIER_EDEFAULT;

	/**
	 * The default value of the '{@link #getOrigin() <em>Origin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrigin()
	 * @generated
	 * @ordered
	 */
	protected static final String ORIGIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOrigin() <em>Origin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrigin()
	 * @generated
	 * @ordered
	 */
	protected String origin = ORIGIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getDeliveredOn() <em>Delivered On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeliveredOn()
	 * @generated
	 * @ordered
	 */
	protected static final String DELIVERED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDeliveredOn() <em>Delivered On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeliveredOn()
	 * @generated
	 * @ordered
	 */
	protected String deliveredOn = DELIVERED_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFrom() <em>From</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrom()
	 * @generated
	 * @ordered
	 */
	protected EList<Lot> from;

	/**
	 * The cached value of the '{@link #getValues() <em>Values</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValues()
	 * @generated
	 * @ordered
	 */
	protected EList<Reading> values;

	/**
	 * The cached value of the '{@link #getTreatments() <em>Treatments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTreatments()
	 * @generated
	 * @ordered
	 */
	protected EList<Treatment> treatments;

	/**
	 * The cached value of the '{@link #getAnalyses() <em>Analyses</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnalyses()
	 * @generated
	 * @ordered
	 */
	protected EList<Analysis> analyses;

	/**
	 * The default value of the '{@link #getMoistureBasis() <em>Moisture Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoistureBasis()
	 * @generated
	 * @ordered
	 */
	protected static final String MOISTURE_BASIS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMoistureBasis() <em>Moisture Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoistureBasis()
	 * @generated
	 * @ordered
	 */
	protected String moistureBasis = MOISTURE_BASIS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRecipe() <em>Recipe</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecipe()
	 * @generated
	 * @ordered
	 */
	protected EList<MixPart> recipe;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LotImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.LOT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Material getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(Material newMaterial) {
		Material oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSupplier() {
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupplier(String newSupplier) {
		String oldSupplier = supplier;
		supplier = newSupplier;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__SUPPLIER, oldSupplier, supplier));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOrigin() {
		return origin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOrigin(String newOrigin) {
		String oldOrigin = origin;
		origin = newOrigin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__ORIGIN, oldOrigin, origin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDeliveredOn() {
		return deliveredOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDeliveredOn(String newDeliveredOn) {
		String oldDeliveredOn = deliveredOn;
		deliveredOn = newDeliveredOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__DELIVERED_ON, oldDeliveredOn, deliveredOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Lot> getFrom() {
		if (from == null) {
			from = new EObjectResolvingEList<Lot>(Lot.class, this, ModelPackage.LOT__FROM);
		}
		return from;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Reading> getValues() {
		if (values == null) {
			values = new EObjectContainmentEList<Reading>(Reading.class, this, ModelPackage.LOT__VALUES);
		}
		return values;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Treatment> getTreatments() {
		if (treatments == null) {
			treatments = new EObjectContainmentEList<Treatment>(Treatment.class, this, ModelPackage.LOT__TREATMENTS);
		}
		return treatments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Analysis> getAnalyses() {
		if (analyses == null) {
			analyses = new EObjectContainmentEList<Analysis>(Analysis.class, this, ModelPackage.LOT__ANALYSES);
		}
		return analyses;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMoistureBasis() {
		return moistureBasis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMoistureBasis(String newMoistureBasis) {
		String oldMoistureBasis = moistureBasis;
		moistureBasis = newMoistureBasis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOT__MOISTURE_BASIS, oldMoistureBasis, moistureBasis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MixPart> getRecipe() {
		if (recipe == null) {
			recipe = new EObjectContainmentEList<MixPart>(MixPart.class, this, ModelPackage.LOT__RECIPE);
		}
		return recipe;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.LOT__VALUES:
				return ((InternalEList<?>)getValues()).basicRemove(otherEnd, msgs);
			case ModelPackage.LOT__TREATMENTS:
				return ((InternalEList<?>)getTreatments()).basicRemove(otherEnd, msgs);
			case ModelPackage.LOT__ANALYSES:
				return ((InternalEList<?>)getAnalyses()).basicRemove(otherEnd, msgs);
			case ModelPackage.LOT__RECIPE:
				return ((InternalEList<?>)getRecipe()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.LOT__MATERIAL:
				return getMaterial();
			case ModelPackage.LOT__SUPPLIER:
				return getSupplier();
			case ModelPackage.LOT__ORIGIN:
				return getOrigin();
			case ModelPackage.LOT__DELIVERED_ON:
				return getDeliveredOn();
			case ModelPackage.LOT__FROM:
				return getFrom();
			case ModelPackage.LOT__VALUES:
				return getValues();
			case ModelPackage.LOT__TREATMENTS:
				return getTreatments();
			case ModelPackage.LOT__ANALYSES:
				return getAnalyses();
			case ModelPackage.LOT__MOISTURE_BASIS:
				return getMoistureBasis();
			case ModelPackage.LOT__RECIPE:
				return getRecipe();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.LOT__MATERIAL:
				setMaterial((Material)newValue);
				return;
			case ModelPackage.LOT__SUPPLIER:
				setSupplier((String)newValue);
				return;
			case ModelPackage.LOT__ORIGIN:
				setOrigin((String)newValue);
				return;
			case ModelPackage.LOT__DELIVERED_ON:
				setDeliveredOn((String)newValue);
				return;
			case ModelPackage.LOT__FROM:
				getFrom().clear();
				getFrom().addAll((Collection<? extends Lot>)newValue);
				return;
			case ModelPackage.LOT__VALUES:
				getValues().clear();
				getValues().addAll((Collection<? extends Reading>)newValue);
				return;
			case ModelPackage.LOT__TREATMENTS:
				getTreatments().clear();
				getTreatments().addAll((Collection<? extends Treatment>)newValue);
				return;
			case ModelPackage.LOT__ANALYSES:
				getAnalyses().clear();
				getAnalyses().addAll((Collection<? extends Analysis>)newValue);
				return;
			case ModelPackage.LOT__MOISTURE_BASIS:
				setMoistureBasis((String)newValue);
				return;
			case ModelPackage.LOT__RECIPE:
				getRecipe().clear();
				getRecipe().addAll((Collection<? extends MixPart>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case ModelPackage.LOT__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case ModelPackage.LOT__SUPPLIER:
				setSupplier(SUPPLIER_EDEFAULT);
				return;
			case ModelPackage.LOT__ORIGIN:
				setOrigin(ORIGIN_EDEFAULT);
				return;
			case ModelPackage.LOT__DELIVERED_ON:
				setDeliveredOn(DELIVERED_ON_EDEFAULT);
				return;
			case ModelPackage.LOT__FROM:
				getFrom().clear();
				return;
			case ModelPackage.LOT__VALUES:
				getValues().clear();
				return;
			case ModelPackage.LOT__TREATMENTS:
				getTreatments().clear();
				return;
			case ModelPackage.LOT__ANALYSES:
				getAnalyses().clear();
				return;
			case ModelPackage.LOT__MOISTURE_BASIS:
				setMoistureBasis(MOISTURE_BASIS_EDEFAULT);
				return;
			case ModelPackage.LOT__RECIPE:
				getRecipe().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case ModelPackage.LOT__MATERIAL:
				return MATERIAL_EDEFAULT == null ? material != null : !MATERIAL_EDEFAULT.equals(material);
			case ModelPackage.LOT__SUPPLIER:
				return SUPPLIER_EDEFAULT == null ? supplier != null : !SUPPLIER_EDEFAULT.equals(supplier);
			case ModelPackage.LOT__ORIGIN:
				return ORIGIN_EDEFAULT == null ? origin != null : !ORIGIN_EDEFAULT.equals(origin);
			case ModelPackage.LOT__DELIVERED_ON:
				return DELIVERED_ON_EDEFAULT == null ? deliveredOn != null : !DELIVERED_ON_EDEFAULT.equals(deliveredOn);
			case ModelPackage.LOT__FROM:
				return from != null && !from.isEmpty();
			case ModelPackage.LOT__VALUES:
				return values != null && !values.isEmpty();
			case ModelPackage.LOT__TREATMENTS:
				return treatments != null && !treatments.isEmpty();
			case ModelPackage.LOT__ANALYSES:
				return analyses != null && !analyses.isEmpty();
			case ModelPackage.LOT__MOISTURE_BASIS:
				return MOISTURE_BASIS_EDEFAULT == null ? moistureBasis != null : !MOISTURE_BASIS_EDEFAULT.equals(moistureBasis);
			case ModelPackage.LOT__RECIPE:
				return recipe != null && !recipe.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (material: ");
		result.append(material);
		result.append(", supplier: ");
		result.append(supplier);
		result.append(", origin: ");
		result.append(origin);
		result.append(", deliveredOn: ");
		result.append(deliveredOn);
		result.append(", moistureBasis: ");
		result.append(moistureBasis);
		result.append(')');
		return result.toString();
	}

} //LotImpl
