/**
 */
package daubline.model.impl;

import daubline.model.Lot;
import daubline.model.ModelPackage;
import daubline.model.Provision;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Provision</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getAvailable <em>Available</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getMoisture <em>Moisture</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#isDryBasis <em>Dry Basis</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getLosses <em>Losses</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getReserve <em>Reserve</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getOnce <em>Once</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getPerTrial <em>Per Trial</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getPerFurnace <em>Per Furnace</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getPerRefit <em>Per Refit</em>}</li>
 *   <li>{@link daubline.model.impl.ProvisionImpl#getLots <em>Lots</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProvisionImpl extends NamedImpl implements Provision {
	/**
	 * The default value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected static final String UNIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected String unit = UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getAvailable() <em>Available</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAvailable()
	 * @generated
	 * @ordered
	 */
	protected static final Double AVAILABLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAvailable() <em>Available</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAvailable()
	 * @generated
	 * @ordered
	 */
	protected Double available = AVAILABLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMoisture() <em>Moisture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoisture()
	 * @generated
	 * @ordered
	 */
	protected static final Double MOISTURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMoisture() <em>Moisture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoisture()
	 * @generated
	 * @ordered
	 */
	protected Double moisture = MOISTURE_EDEFAULT;

	/**
	 * The default value of the '{@link #isDryBasis() <em>Dry Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDryBasis()
	 * @generated
	 * @ordered
	 */
	protected static final boolean DRY_BASIS_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isDryBasis() <em>Dry Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDryBasis()
	 * @generated
	 * @ordered
	 */
	protected boolean dryBasis = DRY_BASIS_EDEFAULT;

	/**
	 * The default value of the '{@link #getLosses() <em>Losses</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLosses()
	 * @generated
	 * @ordered
	 */
	protected static final String LOSSES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLosses() <em>Losses</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLosses()
	 * @generated
	 * @ordered
	 */
	protected String losses = LOSSES_EDEFAULT;

	/**
	 * The default value of the '{@link #getReserve() <em>Reserve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReserve()
	 * @generated
	 * @ordered
	 */
	protected static final Double RESERVE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReserve() <em>Reserve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReserve()
	 * @generated
	 * @ordered
	 */
	protected Double reserve = RESERVE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOnce() <em>Once</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnce()
	 * @generated
	 * @ordered
	 */
	protected static final Double ONCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOnce() <em>Once</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOnce()
	 * @generated
	 * @ordered
	 */
	protected Double once = ONCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPerTrial() <em>Per Trial</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerTrial()
	 * @generated
	 * @ordered
	 */
	protected static final Double PER_TRIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPerTrial() <em>Per Trial</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerTrial()
	 * @generated
	 * @ordered
	 */
	protected Double perTrial = PER_TRIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getPerFurnace() <em>Per Furnace</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerFurnace()
	 * @generated
	 * @ordered
	 */
	protected static final Double PER_FURNACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPerFurnace() <em>Per Furnace</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerFurnace()
	 * @generated
	 * @ordered
	 */
	protected Double perFurnace = PER_FURNACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPerRefit() <em>Per Refit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerRefit()
	 * @generated
	 * @ordered
	 */
	protected static final Double PER_REFIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPerRefit() <em>Per Refit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerRefit()
	 * @generated
	 * @ordered
	 */
	protected Double perRefit = PER_REFIT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLots() <em>Lots</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLots()
	 * @generated
	 * @ordered
	 */
	protected EList<Lot> lots;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProvisionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PROVISION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnit() {
		return unit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(String newUnit) {
		String oldUnit = unit;
		unit = newUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAvailable() {
		return available;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAvailable(Double newAvailable) {
		Double oldAvailable = available;
		available = newAvailable;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__AVAILABLE, oldAvailable, available));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMoisture() {
		return moisture;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMoisture(Double newMoisture) {
		Double oldMoisture = moisture;
		moisture = newMoisture;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__MOISTURE, oldMoisture, moisture));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isDryBasis() {
		return dryBasis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDryBasis(boolean newDryBasis) {
		boolean oldDryBasis = dryBasis;
		dryBasis = newDryBasis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__DRY_BASIS, oldDryBasis, dryBasis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLosses() {
		return losses;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLosses(String newLosses) {
		String oldLosses = losses;
		losses = newLosses;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__LOSSES, oldLosses, losses));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getReserve() {
		return reserve;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReserve(Double newReserve) {
		Double oldReserve = reserve;
		reserve = newReserve;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__RESERVE, oldReserve, reserve));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOnce() {
		return once;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOnce(Double newOnce) {
		Double oldOnce = once;
		once = newOnce;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__ONCE, oldOnce, once));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPerTrial() {
		return perTrial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerTrial(Double newPerTrial) {
		Double oldPerTrial = perTrial;
		perTrial = newPerTrial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__PER_TRIAL, oldPerTrial, perTrial));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPerFurnace() {
		return perFurnace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerFurnace(Double newPerFurnace) {
		Double oldPerFurnace = perFurnace;
		perFurnace = newPerFurnace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__PER_FURNACE, oldPerFurnace, perFurnace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPerRefit() {
		return perRefit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerRefit(Double newPerRefit) {
		Double oldPerRefit = perRefit;
		perRefit = newPerRefit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PROVISION__PER_REFIT, oldPerRefit, perRefit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Lot> getLots() {
		if (lots == null) {
			lots = new EObjectResolvingEList<Lot>(Lot.class, this, ModelPackage.PROVISION__LOTS);
		}
		return lots;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.PROVISION__UNIT:
				return getUnit();
			case ModelPackage.PROVISION__AVAILABLE:
				return getAvailable();
			case ModelPackage.PROVISION__MOISTURE:
				return getMoisture();
			case ModelPackage.PROVISION__DRY_BASIS:
				return isDryBasis();
			case ModelPackage.PROVISION__LOSSES:
				return getLosses();
			case ModelPackage.PROVISION__RESERVE:
				return getReserve();
			case ModelPackage.PROVISION__ONCE:
				return getOnce();
			case ModelPackage.PROVISION__PER_TRIAL:
				return getPerTrial();
			case ModelPackage.PROVISION__PER_FURNACE:
				return getPerFurnace();
			case ModelPackage.PROVISION__PER_REFIT:
				return getPerRefit();
			case ModelPackage.PROVISION__LOTS:
				return getLots();
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
			case ModelPackage.PROVISION__UNIT:
				setUnit((String)newValue);
				return;
			case ModelPackage.PROVISION__AVAILABLE:
				setAvailable((Double)newValue);
				return;
			case ModelPackage.PROVISION__MOISTURE:
				setMoisture((Double)newValue);
				return;
			case ModelPackage.PROVISION__DRY_BASIS:
				setDryBasis((Boolean)newValue);
				return;
			case ModelPackage.PROVISION__LOSSES:
				setLosses((String)newValue);
				return;
			case ModelPackage.PROVISION__RESERVE:
				setReserve((Double)newValue);
				return;
			case ModelPackage.PROVISION__ONCE:
				setOnce((Double)newValue);
				return;
			case ModelPackage.PROVISION__PER_TRIAL:
				setPerTrial((Double)newValue);
				return;
			case ModelPackage.PROVISION__PER_FURNACE:
				setPerFurnace((Double)newValue);
				return;
			case ModelPackage.PROVISION__PER_REFIT:
				setPerRefit((Double)newValue);
				return;
			case ModelPackage.PROVISION__LOTS:
				getLots().clear();
				getLots().addAll((Collection<? extends Lot>)newValue);
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
			case ModelPackage.PROVISION__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case ModelPackage.PROVISION__AVAILABLE:
				setAvailable(AVAILABLE_EDEFAULT);
				return;
			case ModelPackage.PROVISION__MOISTURE:
				setMoisture(MOISTURE_EDEFAULT);
				return;
			case ModelPackage.PROVISION__DRY_BASIS:
				setDryBasis(DRY_BASIS_EDEFAULT);
				return;
			case ModelPackage.PROVISION__LOSSES:
				setLosses(LOSSES_EDEFAULT);
				return;
			case ModelPackage.PROVISION__RESERVE:
				setReserve(RESERVE_EDEFAULT);
				return;
			case ModelPackage.PROVISION__ONCE:
				setOnce(ONCE_EDEFAULT);
				return;
			case ModelPackage.PROVISION__PER_TRIAL:
				setPerTrial(PER_TRIAL_EDEFAULT);
				return;
			case ModelPackage.PROVISION__PER_FURNACE:
				setPerFurnace(PER_FURNACE_EDEFAULT);
				return;
			case ModelPackage.PROVISION__PER_REFIT:
				setPerRefit(PER_REFIT_EDEFAULT);
				return;
			case ModelPackage.PROVISION__LOTS:
				getLots().clear();
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
			case ModelPackage.PROVISION__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
			case ModelPackage.PROVISION__AVAILABLE:
				return AVAILABLE_EDEFAULT == null ? available != null : !AVAILABLE_EDEFAULT.equals(available);
			case ModelPackage.PROVISION__MOISTURE:
				return MOISTURE_EDEFAULT == null ? moisture != null : !MOISTURE_EDEFAULT.equals(moisture);
			case ModelPackage.PROVISION__DRY_BASIS:
				return dryBasis != DRY_BASIS_EDEFAULT;
			case ModelPackage.PROVISION__LOSSES:
				return LOSSES_EDEFAULT == null ? losses != null : !LOSSES_EDEFAULT.equals(losses);
			case ModelPackage.PROVISION__RESERVE:
				return RESERVE_EDEFAULT == null ? reserve != null : !RESERVE_EDEFAULT.equals(reserve);
			case ModelPackage.PROVISION__ONCE:
				return ONCE_EDEFAULT == null ? once != null : !ONCE_EDEFAULT.equals(once);
			case ModelPackage.PROVISION__PER_TRIAL:
				return PER_TRIAL_EDEFAULT == null ? perTrial != null : !PER_TRIAL_EDEFAULT.equals(perTrial);
			case ModelPackage.PROVISION__PER_FURNACE:
				return PER_FURNACE_EDEFAULT == null ? perFurnace != null : !PER_FURNACE_EDEFAULT.equals(perFurnace);
			case ModelPackage.PROVISION__PER_REFIT:
				return PER_REFIT_EDEFAULT == null ? perRefit != null : !PER_REFIT_EDEFAULT.equals(perRefit);
			case ModelPackage.PROVISION__LOTS:
				return lots != null && !lots.isEmpty();
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
		result.append(" (unit: ");
		result.append(unit);
		result.append(", available: ");
		result.append(available);
		result.append(", moisture: ");
		result.append(moisture);
		result.append(", dryBasis: ");
		result.append(dryBasis);
		result.append(", losses: ");
		result.append(losses);
		result.append(", reserve: ");
		result.append(reserve);
		result.append(", once: ");
		result.append(once);
		result.append(", perTrial: ");
		result.append(perTrial);
		result.append(", perFurnace: ");
		result.append(perFurnace);
		result.append(", perRefit: ");
		result.append(perRefit);
		result.append(')');
		return result.toString();
	}

} //ProvisionImpl
