/**
 */
package daubline.model.impl;

import daubline.model.Labour;
import daubline.model.ModelPackage;
import daubline.model.Permission;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Labour</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.LabourImpl#getTeam <em>Team</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getFirstDay <em>First Day</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getLastDay <em>Last Day</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getWeekdays <em>Weekdays</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getDaysOff <em>Days Off</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getBuildDays <em>Build Days</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getBuildPeople <em>Build People</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getDryDays <em>Dry Days</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getBurnDays <em>Burn Days</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getBurnPeople <em>Burn People</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getRefitDays <em>Refit Days</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getRefitPeople <em>Refit People</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getRefitDryDays <em>Refit Dry Days</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getFirings <em>Firings</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getFailureShare <em>Failure Share</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getAssurance <em>Assurance</em>}</li>
 *   <li>{@link daubline.model.impl.LabourImpl#getPermissions <em>Permissions</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LabourImpl extends IdentifiedImpl implements Labour {
	/**
	 * The default value of the '{@link #getTeam() <em>Team</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTeam()
	 * @generated
	 * @ordered
	 */
	protected static final Integer TEAM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTeam() <em>Team</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTeam()
	 * @generated
	 * @ordered
	 */
	protected Integer team = TEAM_EDEFAULT;

	/**
	 * The default value of the '{@link #getFirstDay() <em>First Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstDay()
	 * @generated
	 * @ordered
	 */
	protected static final String FIRST_DAY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFirstDay() <em>First Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstDay()
	 * @generated
	 * @ordered
	 */
	protected String firstDay = FIRST_DAY_EDEFAULT;

	/**
	 * The default value of the '{@link #getLastDay() <em>Last Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastDay()
	 * @generated
	 * @ordered
	 */
	protected static final String LAST_DAY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLastDay() <em>Last Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLastDay()
	 * @generated
	 * @ordered
	 */
	protected String lastDay = LAST_DAY_EDEFAULT;

	/**
	 * The default value of the '{@link #getWeekdays() <em>Weekdays</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeekdays()
	 * @generated
	 * @ordered
	 */
	protected static final String WEEKDAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWeekdays() <em>Weekdays</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeekdays()
	 * @generated
	 * @ordered
	 */
	protected String weekdays = WEEKDAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDaysOff() <em>Days Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDaysOff()
	 * @generated
	 * @ordered
	 */
	protected static final String DAYS_OFF_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDaysOff() <em>Days Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDaysOff()
	 * @generated
	 * @ordered
	 */
	protected String daysOff = DAYS_OFF_EDEFAULT;

	/**
	 * The default value of the '{@link #getBuildDays() <em>Build Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuildDays()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BUILD_DAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBuildDays() <em>Build Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuildDays()
	 * @generated
	 * @ordered
	 */
	protected Integer buildDays = BUILD_DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBuildPeople() <em>Build People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuildPeople()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BUILD_PEOPLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBuildPeople() <em>Build People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuildPeople()
	 * @generated
	 * @ordered
	 */
	protected Integer buildPeople = BUILD_PEOPLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDryDays() <em>Dry Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryDays()
	 * @generated
	 * @ordered
	 */
	protected static final Integer DRY_DAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDryDays() <em>Dry Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryDays()
	 * @generated
	 * @ordered
	 */
	protected Integer dryDays = DRY_DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBurnDays() <em>Burn Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBurnDays()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BURN_DAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBurnDays() <em>Burn Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBurnDays()
	 * @generated
	 * @ordered
	 */
	protected Integer burnDays = BURN_DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBurnPeople() <em>Burn People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBurnPeople()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BURN_PEOPLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBurnPeople() <em>Burn People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBurnPeople()
	 * @generated
	 * @ordered
	 */
	protected Integer burnPeople = BURN_PEOPLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRefitDays() <em>Refit Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRefitDays()
	 * @generated
	 * @ordered
	 */
	protected static final Integer REFIT_DAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRefitDays() <em>Refit Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRefitDays()
	 * @generated
	 * @ordered
	 */
	protected Integer refitDays = REFIT_DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getRefitPeople() <em>Refit People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRefitPeople()
	 * @generated
	 * @ordered
	 */
	protected static final Integer REFIT_PEOPLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRefitPeople() <em>Refit People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRefitPeople()
	 * @generated
	 * @ordered
	 */
	protected Integer refitPeople = REFIT_PEOPLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRefitDryDays() <em>Refit Dry Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRefitDryDays()
	 * @generated
	 * @ordered
	 */
	protected static final Integer REFIT_DRY_DAYS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRefitDryDays() <em>Refit Dry Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRefitDryDays()
	 * @generated
	 * @ordered
	 */
	protected Integer refitDryDays = REFIT_DRY_DAYS_EDEFAULT;

	/**
	 * The default value of the '{@link #getFirings() <em>Firings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirings()
	 * @generated
	 * @ordered
	 */
	protected static final Integer FIRINGS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFirings() <em>Firings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirings()
	 * @generated
	 * @ordered
	 */
	protected Integer firings = FIRINGS_EDEFAULT;

	/**
	 * The default value of the '{@link #getFailureShare() <em>Failure Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFailureShare()
	 * @generated
	 * @ordered
	 */
	protected static final Double FAILURE_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFailureShare() <em>Failure Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFailureShare()
	 * @generated
	 * @ordered
	 */
	protected Double failureShare = FAILURE_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAssurance() <em>Assurance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAssurance()
	 * @generated
	 * @ordered
	 */
	protected static final Double ASSURANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAssurance() <em>Assurance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAssurance()
	 * @generated
	 * @ordered
	 */
	protected Double assurance = ASSURANCE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPermissions() <em>Permissions</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPermissions()
	 * @generated
	 * @ordered
	 */
	protected EList<Permission> permissions;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LabourImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.LABOUR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getTeam() {
		return team;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTeam(Integer newTeam) {
		Integer oldTeam = team;
		team = newTeam;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__TEAM, oldTeam, team));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFirstDay() {
		return firstDay;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirstDay(String newFirstDay) {
		String oldFirstDay = firstDay;
		firstDay = newFirstDay;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__FIRST_DAY, oldFirstDay, firstDay));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLastDay() {
		return lastDay;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastDay(String newLastDay) {
		String oldLastDay = lastDay;
		lastDay = newLastDay;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__LAST_DAY, oldLastDay, lastDay));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWeekdays() {
		return weekdays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWeekdays(String newWeekdays) {
		String oldWeekdays = weekdays;
		weekdays = newWeekdays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__WEEKDAYS, oldWeekdays, weekdays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDaysOff() {
		return daysOff;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDaysOff(String newDaysOff) {
		String oldDaysOff = daysOff;
		daysOff = newDaysOff;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__DAYS_OFF, oldDaysOff, daysOff));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBuildDays() {
		return buildDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBuildDays(Integer newBuildDays) {
		Integer oldBuildDays = buildDays;
		buildDays = newBuildDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__BUILD_DAYS, oldBuildDays, buildDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBuildPeople() {
		return buildPeople;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBuildPeople(Integer newBuildPeople) {
		Integer oldBuildPeople = buildPeople;
		buildPeople = newBuildPeople;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__BUILD_PEOPLE, oldBuildPeople, buildPeople));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getDryDays() {
		return dryDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDryDays(Integer newDryDays) {
		Integer oldDryDays = dryDays;
		dryDays = newDryDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__DRY_DAYS, oldDryDays, dryDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBurnDays() {
		return burnDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBurnDays(Integer newBurnDays) {
		Integer oldBurnDays = burnDays;
		burnDays = newBurnDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__BURN_DAYS, oldBurnDays, burnDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBurnPeople() {
		return burnPeople;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBurnPeople(Integer newBurnPeople) {
		Integer oldBurnPeople = burnPeople;
		burnPeople = newBurnPeople;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__BURN_PEOPLE, oldBurnPeople, burnPeople));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getRefitDays() {
		return refitDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRefitDays(Integer newRefitDays) {
		Integer oldRefitDays = refitDays;
		refitDays = newRefitDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__REFIT_DAYS, oldRefitDays, refitDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getRefitPeople() {
		return refitPeople;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRefitPeople(Integer newRefitPeople) {
		Integer oldRefitPeople = refitPeople;
		refitPeople = newRefitPeople;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__REFIT_PEOPLE, oldRefitPeople, refitPeople));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getRefitDryDays() {
		return refitDryDays;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRefitDryDays(Integer newRefitDryDays) {
		Integer oldRefitDryDays = refitDryDays;
		refitDryDays = newRefitDryDays;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__REFIT_DRY_DAYS, oldRefitDryDays, refitDryDays));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getFirings() {
		return firings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirings(Integer newFirings) {
		Integer oldFirings = firings;
		firings = newFirings;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__FIRINGS, oldFirings, firings));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFailureShare() {
		return failureShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFailureShare(Double newFailureShare) {
		Double oldFailureShare = failureShare;
		failureShare = newFailureShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__FAILURE_SHARE, oldFailureShare, failureShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAssurance() {
		return assurance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAssurance(Double newAssurance) {
		Double oldAssurance = assurance;
		assurance = newAssurance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LABOUR__ASSURANCE, oldAssurance, assurance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Permission> getPermissions() {
		if (permissions == null) {
			permissions = new EObjectResolvingEList<Permission>(Permission.class, this, ModelPackage.LABOUR__PERMISSIONS);
		}
		return permissions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.LABOUR__TEAM:
				return getTeam();
			case ModelPackage.LABOUR__FIRST_DAY:
				return getFirstDay();
			case ModelPackage.LABOUR__LAST_DAY:
				return getLastDay();
			case ModelPackage.LABOUR__WEEKDAYS:
				return getWeekdays();
			case ModelPackage.LABOUR__DAYS_OFF:
				return getDaysOff();
			case ModelPackage.LABOUR__BUILD_DAYS:
				return getBuildDays();
			case ModelPackage.LABOUR__BUILD_PEOPLE:
				return getBuildPeople();
			case ModelPackage.LABOUR__DRY_DAYS:
				return getDryDays();
			case ModelPackage.LABOUR__BURN_DAYS:
				return getBurnDays();
			case ModelPackage.LABOUR__BURN_PEOPLE:
				return getBurnPeople();
			case ModelPackage.LABOUR__REFIT_DAYS:
				return getRefitDays();
			case ModelPackage.LABOUR__REFIT_PEOPLE:
				return getRefitPeople();
			case ModelPackage.LABOUR__REFIT_DRY_DAYS:
				return getRefitDryDays();
			case ModelPackage.LABOUR__FIRINGS:
				return getFirings();
			case ModelPackage.LABOUR__FAILURE_SHARE:
				return getFailureShare();
			case ModelPackage.LABOUR__ASSURANCE:
				return getAssurance();
			case ModelPackage.LABOUR__PERMISSIONS:
				return getPermissions();
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
			case ModelPackage.LABOUR__TEAM:
				setTeam((Integer)newValue);
				return;
			case ModelPackage.LABOUR__FIRST_DAY:
				setFirstDay((String)newValue);
				return;
			case ModelPackage.LABOUR__LAST_DAY:
				setLastDay((String)newValue);
				return;
			case ModelPackage.LABOUR__WEEKDAYS:
				setWeekdays((String)newValue);
				return;
			case ModelPackage.LABOUR__DAYS_OFF:
				setDaysOff((String)newValue);
				return;
			case ModelPackage.LABOUR__BUILD_DAYS:
				setBuildDays((Integer)newValue);
				return;
			case ModelPackage.LABOUR__BUILD_PEOPLE:
				setBuildPeople((Integer)newValue);
				return;
			case ModelPackage.LABOUR__DRY_DAYS:
				setDryDays((Integer)newValue);
				return;
			case ModelPackage.LABOUR__BURN_DAYS:
				setBurnDays((Integer)newValue);
				return;
			case ModelPackage.LABOUR__BURN_PEOPLE:
				setBurnPeople((Integer)newValue);
				return;
			case ModelPackage.LABOUR__REFIT_DAYS:
				setRefitDays((Integer)newValue);
				return;
			case ModelPackage.LABOUR__REFIT_PEOPLE:
				setRefitPeople((Integer)newValue);
				return;
			case ModelPackage.LABOUR__REFIT_DRY_DAYS:
				setRefitDryDays((Integer)newValue);
				return;
			case ModelPackage.LABOUR__FIRINGS:
				setFirings((Integer)newValue);
				return;
			case ModelPackage.LABOUR__FAILURE_SHARE:
				setFailureShare((Double)newValue);
				return;
			case ModelPackage.LABOUR__ASSURANCE:
				setAssurance((Double)newValue);
				return;
			case ModelPackage.LABOUR__PERMISSIONS:
				getPermissions().clear();
				getPermissions().addAll((Collection<? extends Permission>)newValue);
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
			case ModelPackage.LABOUR__TEAM:
				setTeam(TEAM_EDEFAULT);
				return;
			case ModelPackage.LABOUR__FIRST_DAY:
				setFirstDay(FIRST_DAY_EDEFAULT);
				return;
			case ModelPackage.LABOUR__LAST_DAY:
				setLastDay(LAST_DAY_EDEFAULT);
				return;
			case ModelPackage.LABOUR__WEEKDAYS:
				setWeekdays(WEEKDAYS_EDEFAULT);
				return;
			case ModelPackage.LABOUR__DAYS_OFF:
				setDaysOff(DAYS_OFF_EDEFAULT);
				return;
			case ModelPackage.LABOUR__BUILD_DAYS:
				setBuildDays(BUILD_DAYS_EDEFAULT);
				return;
			case ModelPackage.LABOUR__BUILD_PEOPLE:
				setBuildPeople(BUILD_PEOPLE_EDEFAULT);
				return;
			case ModelPackage.LABOUR__DRY_DAYS:
				setDryDays(DRY_DAYS_EDEFAULT);
				return;
			case ModelPackage.LABOUR__BURN_DAYS:
				setBurnDays(BURN_DAYS_EDEFAULT);
				return;
			case ModelPackage.LABOUR__BURN_PEOPLE:
				setBurnPeople(BURN_PEOPLE_EDEFAULT);
				return;
			case ModelPackage.LABOUR__REFIT_DAYS:
				setRefitDays(REFIT_DAYS_EDEFAULT);
				return;
			case ModelPackage.LABOUR__REFIT_PEOPLE:
				setRefitPeople(REFIT_PEOPLE_EDEFAULT);
				return;
			case ModelPackage.LABOUR__REFIT_DRY_DAYS:
				setRefitDryDays(REFIT_DRY_DAYS_EDEFAULT);
				return;
			case ModelPackage.LABOUR__FIRINGS:
				setFirings(FIRINGS_EDEFAULT);
				return;
			case ModelPackage.LABOUR__FAILURE_SHARE:
				setFailureShare(FAILURE_SHARE_EDEFAULT);
				return;
			case ModelPackage.LABOUR__ASSURANCE:
				setAssurance(ASSURANCE_EDEFAULT);
				return;
			case ModelPackage.LABOUR__PERMISSIONS:
				getPermissions().clear();
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
			case ModelPackage.LABOUR__TEAM:
				return TEAM_EDEFAULT == null ? team != null : !TEAM_EDEFAULT.equals(team);
			case ModelPackage.LABOUR__FIRST_DAY:
				return FIRST_DAY_EDEFAULT == null ? firstDay != null : !FIRST_DAY_EDEFAULT.equals(firstDay);
			case ModelPackage.LABOUR__LAST_DAY:
				return LAST_DAY_EDEFAULT == null ? lastDay != null : !LAST_DAY_EDEFAULT.equals(lastDay);
			case ModelPackage.LABOUR__WEEKDAYS:
				return WEEKDAYS_EDEFAULT == null ? weekdays != null : !WEEKDAYS_EDEFAULT.equals(weekdays);
			case ModelPackage.LABOUR__DAYS_OFF:
				return DAYS_OFF_EDEFAULT == null ? daysOff != null : !DAYS_OFF_EDEFAULT.equals(daysOff);
			case ModelPackage.LABOUR__BUILD_DAYS:
				return BUILD_DAYS_EDEFAULT == null ? buildDays != null : !BUILD_DAYS_EDEFAULT.equals(buildDays);
			case ModelPackage.LABOUR__BUILD_PEOPLE:
				return BUILD_PEOPLE_EDEFAULT == null ? buildPeople != null : !BUILD_PEOPLE_EDEFAULT.equals(buildPeople);
			case ModelPackage.LABOUR__DRY_DAYS:
				return DRY_DAYS_EDEFAULT == null ? dryDays != null : !DRY_DAYS_EDEFAULT.equals(dryDays);
			case ModelPackage.LABOUR__BURN_DAYS:
				return BURN_DAYS_EDEFAULT == null ? burnDays != null : !BURN_DAYS_EDEFAULT.equals(burnDays);
			case ModelPackage.LABOUR__BURN_PEOPLE:
				return BURN_PEOPLE_EDEFAULT == null ? burnPeople != null : !BURN_PEOPLE_EDEFAULT.equals(burnPeople);
			case ModelPackage.LABOUR__REFIT_DAYS:
				return REFIT_DAYS_EDEFAULT == null ? refitDays != null : !REFIT_DAYS_EDEFAULT.equals(refitDays);
			case ModelPackage.LABOUR__REFIT_PEOPLE:
				return REFIT_PEOPLE_EDEFAULT == null ? refitPeople != null : !REFIT_PEOPLE_EDEFAULT.equals(refitPeople);
			case ModelPackage.LABOUR__REFIT_DRY_DAYS:
				return REFIT_DRY_DAYS_EDEFAULT == null ? refitDryDays != null : !REFIT_DRY_DAYS_EDEFAULT.equals(refitDryDays);
			case ModelPackage.LABOUR__FIRINGS:
				return FIRINGS_EDEFAULT == null ? firings != null : !FIRINGS_EDEFAULT.equals(firings);
			case ModelPackage.LABOUR__FAILURE_SHARE:
				return FAILURE_SHARE_EDEFAULT == null ? failureShare != null : !FAILURE_SHARE_EDEFAULT.equals(failureShare);
			case ModelPackage.LABOUR__ASSURANCE:
				return ASSURANCE_EDEFAULT == null ? assurance != null : !ASSURANCE_EDEFAULT.equals(assurance);
			case ModelPackage.LABOUR__PERMISSIONS:
				return permissions != null && !permissions.isEmpty();
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
		result.append(" (team: ");
		result.append(team);
		result.append(", firstDay: ");
		result.append(firstDay);
		result.append(", lastDay: ");
		result.append(lastDay);
		result.append(", weekdays: ");
		result.append(weekdays);
		result.append(", daysOff: ");
		result.append(daysOff);
		result.append(", buildDays: ");
		result.append(buildDays);
		result.append(", buildPeople: ");
		result.append(buildPeople);
		result.append(", dryDays: ");
		result.append(dryDays);
		result.append(", burnDays: ");
		result.append(burnDays);
		result.append(", burnPeople: ");
		result.append(burnPeople);
		result.append(", refitDays: ");
		result.append(refitDays);
		result.append(", refitPeople: ");
		result.append(refitPeople);
		result.append(", refitDryDays: ");
		result.append(refitDryDays);
		result.append(", firings: ");
		result.append(firings);
		result.append(", failureShare: ");
		result.append(failureShare);
		result.append(", assurance: ");
		result.append(assurance);
		result.append(')');
		return result.toString();
	}

} //LabourImpl
