/**
 */
package daubline.model.impl;

import daubline.model.FrozenPlan;
import daubline.model.ModelPackage;
import daubline.model.PlannedRun;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Frozen Plan</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getAim <em>Aim</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getSeed <em>Seed</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getAlgorithm <em>Algorithm</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getVersion <em>Version</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getFrozenAt <em>Frozen At</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getEngine <em>Engine</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getFurnaceRatio <em>Furnace Ratio</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getDayRatio <em>Day Ratio</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getRestriction <em>Restriction</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getReasons <em>Reasons</em>}</li>
 *   <li>{@link daubline.model.impl.FrozenPlanImpl#getRuns <em>Runs</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FrozenPlanImpl extends NamedImpl implements FrozenPlan {
	/**
	 * The default value of the '{@link #getAim() <em>Aim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAim()
	 * @generated
	 * @ordered
	 */
	protected static final String AIM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAim() <em>Aim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAim()
	 * @generated
	 * @ordered
	 */
	protected String aim = AIM_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeed() <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeed()
	 * @generated
	 * @ordered
	 */
	protected static final Long SEED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSeed() <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeed()
	 * @generated
	 * @ordered
	 */
	protected Long seed = SEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getAlgorithm() <em>Algorithm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlgorithm()
	 * @generated
	 * @ordered
	 */
	protected static final String ALGORITHM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAlgorithm() <em>Algorithm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAlgorithm()
	 * @generated
	 * @ordered
	 */
	protected String algorithm = ALGORITHM_EDEFAULT;

	/**
	 * The default value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected static final String VERSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVersion() <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVersion()
	 * @generated
	 * @ordered
	 */
	protected String version = VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getFrozenAt() <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenAt()
	 * @generated
	 * @ordered
	 */
	protected static final String FROZEN_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrozenAt() <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrozenAt()
	 * @generated
	 * @ordered
	 */
	protected String frozenAt = FROZEN_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getEngine() <em>Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngine()
	 * @generated
	 * @ordered
	 */
	protected static final String ENGINE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEngine() <em>Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngine()
	 * @generated
	 * @ordered
	 */
	protected String engine = ENGINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFurnaceRatio() <em>Furnace Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFurnaceRatio()
	 * @generated
	 * @ordered
	 */
	protected static final Double FURNACE_RATIO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFurnaceRatio() <em>Furnace Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFurnaceRatio()
	 * @generated
	 * @ordered
	 */
	protected Double furnaceRatio = FURNACE_RATIO_EDEFAULT;

	/**
	 * The default value of the '{@link #getDayRatio() <em>Day Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDayRatio()
	 * @generated
	 * @ordered
	 */
	protected static final Double DAY_RATIO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDayRatio() <em>Day Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDayRatio()
	 * @generated
	 * @ordered
	 */
	protected Double dayRatio = DAY_RATIO_EDEFAULT;

	/**
	 * The default value of the '{@link #getRestriction() <em>Restriction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRestriction()
	 * @generated
	 * @ordered
	 */
	protected static final String RESTRICTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRestriction() <em>Restriction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRestriction()
	 * @generated
	 * @ordered
	 */
	protected String restriction = RESTRICTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getReasons() <em>Reasons</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReasons()
	 * @generated
	 * @ordered
	 */
	protected static final String REASONS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReasons() <em>Reasons</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReasons()
	 * @generated
	 * @ordered
	 */
	protected String reasons = REASONS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRuns() <em>Runs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRuns()
	 * @generated
	 * @ordered
	 */
	protected EList<PlannedRun> runs;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FrozenPlanImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.FROZEN_PLAN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAim() {
		return aim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAim(String newAim) {
		String oldAim = aim;
		aim = newAim;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__AIM, oldAim, aim));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Long getSeed() {
		return seed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeed(Long newSeed) {
		Long oldSeed = seed;
		seed = newSeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__SEED, oldSeed, seed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAlgorithm() {
		return algorithm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAlgorithm(String newAlgorithm) {
		String oldAlgorithm = algorithm;
		algorithm = newAlgorithm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__ALGORITHM, oldAlgorithm, algorithm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getVersion() {
		return version;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVersion(String newVersion) {
		String oldVersion = version;
		version = newVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__VERSION, oldVersion, version));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFrozenAt() {
		return frozenAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrozenAt(String newFrozenAt) {
		String oldFrozenAt = frozenAt;
		frozenAt = newFrozenAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__FROZEN_AT, oldFrozenAt, frozenAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEngine() {
		return engine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEngine(String newEngine) {
		String oldEngine = engine;
		engine = newEngine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__ENGINE, oldEngine, engine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFurnaceRatio() {
		return furnaceRatio;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFurnaceRatio(Double newFurnaceRatio) {
		Double oldFurnaceRatio = furnaceRatio;
		furnaceRatio = newFurnaceRatio;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__FURNACE_RATIO, oldFurnaceRatio, furnaceRatio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDayRatio() {
		return dayRatio;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDayRatio(Double newDayRatio) {
		Double oldDayRatio = dayRatio;
		dayRatio = newDayRatio;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__DAY_RATIO, oldDayRatio, dayRatio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRestriction() {
		return restriction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRestriction(String newRestriction) {
		String oldRestriction = restriction;
		restriction = newRestriction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__RESTRICTION, oldRestriction, restriction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReasons() {
		return reasons;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReasons(String newReasons) {
		String oldReasons = reasons;
		reasons = newReasons;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FROZEN_PLAN__REASONS, oldReasons, reasons));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PlannedRun> getRuns() {
		if (runs == null) {
			runs = new EObjectContainmentEList<PlannedRun>(PlannedRun.class, this, ModelPackage.FROZEN_PLAN__RUNS);
		}
		return runs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.FROZEN_PLAN__RUNS:
				return ((InternalEList<?>)getRuns()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.FROZEN_PLAN__AIM:
				return getAim();
			case ModelPackage.FROZEN_PLAN__SEED:
				return getSeed();
			case ModelPackage.FROZEN_PLAN__ALGORITHM:
				return getAlgorithm();
			case ModelPackage.FROZEN_PLAN__VERSION:
				return getVersion();
			case ModelPackage.FROZEN_PLAN__FROZEN_AT:
				return getFrozenAt();
			case ModelPackage.FROZEN_PLAN__ENGINE:
				return getEngine();
			case ModelPackage.FROZEN_PLAN__FURNACE_RATIO:
				return getFurnaceRatio();
			case ModelPackage.FROZEN_PLAN__DAY_RATIO:
				return getDayRatio();
			case ModelPackage.FROZEN_PLAN__RESTRICTION:
				return getRestriction();
			case ModelPackage.FROZEN_PLAN__REASONS:
				return getReasons();
			case ModelPackage.FROZEN_PLAN__RUNS:
				return getRuns();
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
			case ModelPackage.FROZEN_PLAN__AIM:
				setAim((String)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__SEED:
				setSeed((Long)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__ALGORITHM:
				setAlgorithm((String)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__VERSION:
				setVersion((String)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__FROZEN_AT:
				setFrozenAt((String)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__ENGINE:
				setEngine((String)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__FURNACE_RATIO:
				setFurnaceRatio((Double)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__DAY_RATIO:
				setDayRatio((Double)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__RESTRICTION:
				setRestriction((String)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__REASONS:
				setReasons((String)newValue);
				return;
			case ModelPackage.FROZEN_PLAN__RUNS:
				getRuns().clear();
				getRuns().addAll((Collection<? extends PlannedRun>)newValue);
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
			case ModelPackage.FROZEN_PLAN__AIM:
				setAim(AIM_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__SEED:
				setSeed(SEED_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__ALGORITHM:
				setAlgorithm(ALGORITHM_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__VERSION:
				setVersion(VERSION_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__FROZEN_AT:
				setFrozenAt(FROZEN_AT_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__ENGINE:
				setEngine(ENGINE_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__FURNACE_RATIO:
				setFurnaceRatio(FURNACE_RATIO_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__DAY_RATIO:
				setDayRatio(DAY_RATIO_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__RESTRICTION:
				setRestriction(RESTRICTION_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__REASONS:
				setReasons(REASONS_EDEFAULT);
				return;
			case ModelPackage.FROZEN_PLAN__RUNS:
				getRuns().clear();
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
			case ModelPackage.FROZEN_PLAN__AIM:
				return AIM_EDEFAULT == null ? aim != null : !AIM_EDEFAULT.equals(aim);
			case ModelPackage.FROZEN_PLAN__SEED:
				return SEED_EDEFAULT == null ? seed != null : !SEED_EDEFAULT.equals(seed);
			case ModelPackage.FROZEN_PLAN__ALGORITHM:
				return ALGORITHM_EDEFAULT == null ? algorithm != null : !ALGORITHM_EDEFAULT.equals(algorithm);
			case ModelPackage.FROZEN_PLAN__VERSION:
				return VERSION_EDEFAULT == null ? version != null : !VERSION_EDEFAULT.equals(version);
			case ModelPackage.FROZEN_PLAN__FROZEN_AT:
				return FROZEN_AT_EDEFAULT == null ? frozenAt != null : !FROZEN_AT_EDEFAULT.equals(frozenAt);
			case ModelPackage.FROZEN_PLAN__ENGINE:
				return ENGINE_EDEFAULT == null ? engine != null : !ENGINE_EDEFAULT.equals(engine);
			case ModelPackage.FROZEN_PLAN__FURNACE_RATIO:
				return FURNACE_RATIO_EDEFAULT == null ? furnaceRatio != null : !FURNACE_RATIO_EDEFAULT.equals(furnaceRatio);
			case ModelPackage.FROZEN_PLAN__DAY_RATIO:
				return DAY_RATIO_EDEFAULT == null ? dayRatio != null : !DAY_RATIO_EDEFAULT.equals(dayRatio);
			case ModelPackage.FROZEN_PLAN__RESTRICTION:
				return RESTRICTION_EDEFAULT == null ? restriction != null : !RESTRICTION_EDEFAULT.equals(restriction);
			case ModelPackage.FROZEN_PLAN__REASONS:
				return REASONS_EDEFAULT == null ? reasons != null : !REASONS_EDEFAULT.equals(reasons);
			case ModelPackage.FROZEN_PLAN__RUNS:
				return runs != null && !runs.isEmpty();
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
		result.append(" (aim: ");
		result.append(aim);
		result.append(", seed: ");
		result.append(seed);
		result.append(", algorithm: ");
		result.append(algorithm);
		result.append(", version: ");
		result.append(version);
		result.append(", frozenAt: ");
		result.append(frozenAt);
		result.append(", engine: ");
		result.append(engine);
		result.append(", furnaceRatio: ");
		result.append(furnaceRatio);
		result.append(", dayRatio: ");
		result.append(dayRatio);
		result.append(", restriction: ");
		result.append(restriction);
		result.append(", reasons: ");
		result.append(reasons);
		result.append(')');
		return result.toString();
	}

} //FrozenPlanImpl
