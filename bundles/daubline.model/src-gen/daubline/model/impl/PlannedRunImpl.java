/**
 */
package daubline.model.impl;

import daubline.model.ModelPackage;
import daubline.model.PlannedRun;
import daubline.model.Reading;
import daubline.model.Trial;

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
 * An implementation of the model object '<em><b>Planned Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.PlannedRunImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link daubline.model.impl.PlannedRunImpl#getFurnace <em>Furnace</em>}</li>
 *   <li>{@link daubline.model.impl.PlannedRunImpl#getDay <em>Day</em>}</li>
 *   <li>{@link daubline.model.impl.PlannedRunImpl#getTrial <em>Trial</em>}</li>
 *   <li>{@link daubline.model.impl.PlannedRunImpl#getSettings <em>Settings</em>}</li>
 *   <li>{@link daubline.model.impl.PlannedRunImpl#getDeviation <em>Deviation</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PlannedRunImpl extends IdentifiedImpl implements PlannedRun {
	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final Integer PLACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected Integer place = PLACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFurnace() <em>Furnace</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFurnace()
	 * @generated
	 * @ordered
	 */
	protected static final Integer FURNACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFurnace() <em>Furnace</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFurnace()
	 * @generated
	 * @ordered
	 */
	protected Integer furnace = FURNACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDay() <em>Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDay()
	 * @generated
	 * @ordered
	 */
	protected static final Integer DAY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDay() <em>Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDay()
	 * @generated
	 * @ordered
	 */
	protected Integer day = DAY_EDEFAULT;

	/**
	 * The cached value of the '{@link #getTrial() <em>Trial</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrial()
	 * @generated
	 * @ordered
	 */
	protected Trial trial;

	/**
	 * The cached value of the '{@link #getSettings() <em>Settings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSettings()
	 * @generated
	 * @ordered
	 */
	protected EList<Reading> settings;

	/**
	 * The default value of the '{@link #getDeviation() <em>Deviation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeviation()
	 * @generated
	 * @ordered
	 */
	protected static final String DEVIATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDeviation() <em>Deviation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeviation()
	 * @generated
	 * @ordered
	 */
	protected String deviation = DEVIATION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PlannedRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PLANNED_RUN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(Integer newPlace) {
		Integer oldPlace = place;
		place = newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_RUN__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getFurnace() {
		return furnace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFurnace(Integer newFurnace) {
		Integer oldFurnace = furnace;
		furnace = newFurnace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_RUN__FURNACE, oldFurnace, furnace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getDay() {
		return day;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDay(Integer newDay) {
		Integer oldDay = day;
		day = newDay;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_RUN__DAY, oldDay, day));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial getTrial() {
		if (trial != null && trial.eIsProxy()) {
			InternalEObject oldTrial = (InternalEObject)trial;
			trial = (Trial)eResolveProxy(oldTrial);
			if (trial != oldTrial) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.PLANNED_RUN__TRIAL, oldTrial, trial));
			}
		}
		return trial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Trial basicGetTrial() {
		return trial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrial(Trial newTrial) {
		Trial oldTrial = trial;
		trial = newTrial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_RUN__TRIAL, oldTrial, trial));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Reading> getSettings() {
		if (settings == null) {
			settings = new EObjectContainmentEList<Reading>(Reading.class, this, ModelPackage.PLANNED_RUN__SETTINGS);
		}
		return settings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDeviation() {
		return deviation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDeviation(String newDeviation) {
		String oldDeviation = deviation;
		deviation = newDeviation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PLANNED_RUN__DEVIATION, oldDeviation, deviation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.PLANNED_RUN__SETTINGS:
				return ((InternalEList<?>)getSettings()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.PLANNED_RUN__PLACE:
				return getPlace();
			case ModelPackage.PLANNED_RUN__FURNACE:
				return getFurnace();
			case ModelPackage.PLANNED_RUN__DAY:
				return getDay();
			case ModelPackage.PLANNED_RUN__TRIAL:
				if (resolve) return getTrial();
				return basicGetTrial();
			case ModelPackage.PLANNED_RUN__SETTINGS:
				return getSettings();
			case ModelPackage.PLANNED_RUN__DEVIATION:
				return getDeviation();
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
			case ModelPackage.PLANNED_RUN__PLACE:
				setPlace((Integer)newValue);
				return;
			case ModelPackage.PLANNED_RUN__FURNACE:
				setFurnace((Integer)newValue);
				return;
			case ModelPackage.PLANNED_RUN__DAY:
				setDay((Integer)newValue);
				return;
			case ModelPackage.PLANNED_RUN__TRIAL:
				setTrial((Trial)newValue);
				return;
			case ModelPackage.PLANNED_RUN__SETTINGS:
				getSettings().clear();
				getSettings().addAll((Collection<? extends Reading>)newValue);
				return;
			case ModelPackage.PLANNED_RUN__DEVIATION:
				setDeviation((String)newValue);
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
			case ModelPackage.PLANNED_RUN__PLACE:
				setPlace(PLACE_EDEFAULT);
				return;
			case ModelPackage.PLANNED_RUN__FURNACE:
				setFurnace(FURNACE_EDEFAULT);
				return;
			case ModelPackage.PLANNED_RUN__DAY:
				setDay(DAY_EDEFAULT);
				return;
			case ModelPackage.PLANNED_RUN__TRIAL:
				setTrial((Trial)null);
				return;
			case ModelPackage.PLANNED_RUN__SETTINGS:
				getSettings().clear();
				return;
			case ModelPackage.PLANNED_RUN__DEVIATION:
				setDeviation(DEVIATION_EDEFAULT);
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
			case ModelPackage.PLANNED_RUN__PLACE:
				return PLACE_EDEFAULT == null ? place != null : !PLACE_EDEFAULT.equals(place);
			case ModelPackage.PLANNED_RUN__FURNACE:
				return FURNACE_EDEFAULT == null ? furnace != null : !FURNACE_EDEFAULT.equals(furnace);
			case ModelPackage.PLANNED_RUN__DAY:
				return DAY_EDEFAULT == null ? day != null : !DAY_EDEFAULT.equals(day);
			case ModelPackage.PLANNED_RUN__TRIAL:
				return trial != null;
			case ModelPackage.PLANNED_RUN__SETTINGS:
				return settings != null && !settings.isEmpty();
			case ModelPackage.PLANNED_RUN__DEVIATION:
				return DEVIATION_EDEFAULT == null ? deviation != null : !DEVIATION_EDEFAULT.equals(deviation);
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
		result.append(" (place: ");
		result.append(place);
		result.append(", furnace: ");
		result.append(furnace);
		result.append(", day: ");
		result.append(day);
		result.append(", deviation: ");
		result.append(deviation);
		result.append(')');
		return result.toString();
	}

} //PlannedRunImpl
