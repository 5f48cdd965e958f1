/**
 */
package daubline.model.impl;

import daubline.model.Factor;
import daubline.model.ForbiddenCombination;
import daubline.model.FrozenPlan;
import daubline.model.Labour;
import daubline.model.ModelPackage;
import daubline.model.Provision;
import daubline.model.RoleAssignment;
import daubline.model.Series;
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
 * An implementation of the model object '<em><b>Series</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.SeriesImpl#getQuestion <em>Question</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getPlan <em>Plan</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getBudget <em>Budget</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#isFrozen <em>Frozen</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getSeed <em>Seed</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getStopCriteria <em>Stop Criteria</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getFactors <em>Factors</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getRoles <em>Roles</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getTrials <em>Trials</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getAim <em>Aim</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getForbidden <em>Forbidden</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getProvisions <em>Provisions</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getLabour <em>Labour</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getPlans <em>Plans</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getMostTrials <em>Most Trials</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getCentreTrials <em>Centre Trials</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getRepeatTrials <em>Repeat Trials</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getBurnsPerDay <em>Burns Per Day</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getFurnaceRatio <em>Furnace Ratio</em>}</li>
 *   <li>{@link daubline.model.impl.SeriesImpl#getDayRatio <em>Day Ratio</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SeriesImpl extends NamedImpl implements Series {
	/**
	 * The default value of the '{@link #getQuestion() <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuestion()
	 * @generated
	 * @ordered
	 */
	protected static final String QUESTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuestion() <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuestion()
	 * @generated
	 * @ordered
	 */
	protected String question = QUESTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getPlan() <em>Plan</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlan()
	 * @generated
	 * @ordered
	 */
	protected static final String PLAN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlan() <em>Plan</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlan()
	 * @generated
	 * @ordered
	 */
	protected String plan = PLAN_EDEFAULT;

	/**
	 * The default value of the '{@link #getBudget() <em>Budget</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBudget()
	 * @generated
	 * @ordered
	 */
	protected static final String BUDGET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBudget() <em>Budget</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBudget()
	 * @generated
	 * @ordered
	 */
	protected String budget = BUDGET_EDEFAULT;

	/**
	 * The default value of the '{@link #isFrozen() <em>Frozen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isFrozen()
	 * @generated
	 * @ordered
	 */
	protected static final boolean FROZEN_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isFrozen() <em>Frozen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isFrozen()
	 * @generated
	 * @ordered
	 */
	protected boolean frozen = FROZEN_EDEFAULT;

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
	 * The default value of the '{@link #getStopCriteria() <em>Stop Criteria</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStopCriteria()
	 * @generated
	 * @ordered
	 */
	protected static final String STOP_CRITERIA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStopCriteria() <em>Stop Criteria</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStopCriteria()
	 * @generated
	 * @ordered
	 */
	protected String stopCriteria = STOP_CRITERIA_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFactors() <em>Factors</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFactors()
	 * @generated
	 * @ordered
	 */
	protected EList<Factor> factors;

	/**
	 * The cached value of the '{@link #getRoles() <em>Roles</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoles()
	 * @generated
	 * @ordered
	 */
	protected EList<RoleAssignment> roles;

	/**
	 * The cached value of the '{@link #getTrials() <em>Trials</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrials()
	 * @generated
	 * @ordered
	 */
	protected EList<Trial> trials;

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
	 * The cached value of the '{@link #getForbidden() <em>Forbidden</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getForbidden()
	 * @generated
	 * @ordered
	 */
	protected EList<ForbiddenCombination> forbidden;

	/**
	 * The cached value of the '{@link #getProvisions() <em>Provisions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProvisions()
	 * @generated
	 * @ordered
	 */
	protected EList<Provision> provisions;

	/**
	 * The cached value of the '{@link #getLabour() <em>Labour</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabour()
	 * @generated
	 * @ordered
	 */
	protected Labour labour;

	/**
	 * The cached value of the '{@link #getPlans() <em>Plans</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlans()
	 * @generated
	 * @ordered
	 */
	protected EList<FrozenPlan> plans;

	/**
	 * The default value of the '{@link #getMostTrials() <em>Most Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMostTrials()
	 * @generated
	 * @ordered
	 */
	protected static final Integer MOST_TRIALS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMostTrials() <em>Most Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMostTrials()
	 * @generated
	 * @ordered
	 */
	protected Integer mostTrials = MOST_TRIALS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCentreTrials() <em>Centre Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCentreTrials()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CENTRE_TRIALS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCentreTrials() <em>Centre Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCentreTrials()
	 * @generated
	 * @ordered
	 */
	protected Integer centreTrials = CENTRE_TRIALS_EDEFAULT;

	/**
	 * The default value of the '{@link #getRepeatTrials() <em>Repeat Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRepeatTrials()
	 * @generated
	 * @ordered
	 */
	protected static final Integer REPEAT_TRIALS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRepeatTrials() <em>Repeat Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRepeatTrials()
	 * @generated
	 * @ordered
	 */
	protected Integer repeatTrials = REPEAT_TRIALS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBurnsPerDay() <em>Burns Per Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBurnsPerDay()
	 * @generated
	 * @ordered
	 */
	protected static final Integer BURNS_PER_DAY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBurnsPerDay() <em>Burns Per Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBurnsPerDay()
	 * @generated
	 * @ordered
	 */
	protected Integer burnsPerDay = BURNS_PER_DAY_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SeriesImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SERIES;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getQuestion() {
		return question;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuestion(String newQuestion) {
		String oldQuestion = question;
		question = newQuestion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__QUESTION, oldQuestion, question));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlan() {
		return plan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlan(String newPlan) {
		String oldPlan = plan;
		plan = newPlan;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__PLAN, oldPlan, plan));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBudget() {
		return budget;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBudget(String newBudget) {
		String oldBudget = budget;
		budget = newBudget;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__BUDGET, oldBudget, budget));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isFrozen() {
		return frozen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrozen(boolean newFrozen) {
		boolean oldFrozen = frozen;
		frozen = newFrozen;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__FROZEN, oldFrozen, frozen));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__SEED, oldSeed, seed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStopCriteria() {
		return stopCriteria;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStopCriteria(String newStopCriteria) {
		String oldStopCriteria = stopCriteria;
		stopCriteria = newStopCriteria;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__STOP_CRITERIA, oldStopCriteria, stopCriteria));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Factor> getFactors() {
		if (factors == null) {
			factors = new EObjectContainmentEList<Factor>(Factor.class, this, ModelPackage.SERIES__FACTORS);
		}
		return factors;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RoleAssignment> getRoles() {
		if (roles == null) {
			roles = new EObjectContainmentEList<RoleAssignment>(RoleAssignment.class, this, ModelPackage.SERIES__ROLES);
		}
		return roles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Trial> getTrials() {
		if (trials == null) {
			trials = new EObjectContainmentEList<Trial>(Trial.class, this, ModelPackage.SERIES__TRIALS);
		}
		return trials;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__AIM, oldAim, aim));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ForbiddenCombination> getForbidden() {
		if (forbidden == null) {
			forbidden = new EObjectContainmentEList<ForbiddenCombination>(ForbiddenCombination.class, this, ModelPackage.SERIES__FORBIDDEN);
		}
		return forbidden;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Provision> getProvisions() {
		if (provisions == null) {
			provisions = new EObjectContainmentEList<Provision>(Provision.class, this, ModelPackage.SERIES__PROVISIONS);
		}
		return provisions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Labour getLabour() {
		return labour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetLabour(Labour newLabour, NotificationChain msgs) {
		Labour oldLabour = labour;
		labour = newLabour;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__LABOUR, oldLabour, newLabour);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabour(Labour newLabour) {
		if (newLabour != labour) {
			NotificationChain msgs = null;
			if (labour != null)
				msgs = ((InternalEObject)labour).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SERIES__LABOUR, null, msgs);
			if (newLabour != null)
				msgs = ((InternalEObject)newLabour).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.SERIES__LABOUR, null, msgs);
			msgs = basicSetLabour(newLabour, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__LABOUR, newLabour, newLabour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<FrozenPlan> getPlans() {
		if (plans == null) {
			plans = new EObjectContainmentEList<FrozenPlan>(FrozenPlan.class, this, ModelPackage.SERIES__PLANS);
		}
		return plans;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getMostTrials() {
		return mostTrials;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMostTrials(Integer newMostTrials) {
		Integer oldMostTrials = mostTrials;
		mostTrials = newMostTrials;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__MOST_TRIALS, oldMostTrials, mostTrials));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getCentreTrials() {
		return centreTrials;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCentreTrials(Integer newCentreTrials) {
		Integer oldCentreTrials = centreTrials;
		centreTrials = newCentreTrials;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__CENTRE_TRIALS, oldCentreTrials, centreTrials));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getRepeatTrials() {
		return repeatTrials;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRepeatTrials(Integer newRepeatTrials) {
		Integer oldRepeatTrials = repeatTrials;
		repeatTrials = newRepeatTrials;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__REPEAT_TRIALS, oldRepeatTrials, repeatTrials));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getBurnsPerDay() {
		return burnsPerDay;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBurnsPerDay(Integer newBurnsPerDay) {
		Integer oldBurnsPerDay = burnsPerDay;
		burnsPerDay = newBurnsPerDay;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__BURNS_PER_DAY, oldBurnsPerDay, burnsPerDay));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__FURNACE_RATIO, oldFurnaceRatio, furnaceRatio));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SERIES__DAY_RATIO, oldDayRatio, dayRatio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.SERIES__FACTORS:
				return ((InternalEList<?>)getFactors()).basicRemove(otherEnd, msgs);
			case ModelPackage.SERIES__ROLES:
				return ((InternalEList<?>)getRoles()).basicRemove(otherEnd, msgs);
			case ModelPackage.SERIES__TRIALS:
				return ((InternalEList<?>)getTrials()).basicRemove(otherEnd, msgs);
			case ModelPackage.SERIES__FORBIDDEN:
				return ((InternalEList<?>)getForbidden()).basicRemove(otherEnd, msgs);
			case ModelPackage.SERIES__PROVISIONS:
				return ((InternalEList<?>)getProvisions()).basicRemove(otherEnd, msgs);
			case ModelPackage.SERIES__LABOUR:
				return basicSetLabour(null, msgs);
			case ModelPackage.SERIES__PLANS:
				return ((InternalEList<?>)getPlans()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.SERIES__QUESTION:
				return getQuestion();
			case ModelPackage.SERIES__PLAN:
				return getPlan();
			case ModelPackage.SERIES__BUDGET:
				return getBudget();
			case ModelPackage.SERIES__FROZEN:
				return isFrozen();
			case ModelPackage.SERIES__SEED:
				return getSeed();
			case ModelPackage.SERIES__STOP_CRITERIA:
				return getStopCriteria();
			case ModelPackage.SERIES__FACTORS:
				return getFactors();
			case ModelPackage.SERIES__ROLES:
				return getRoles();
			case ModelPackage.SERIES__TRIALS:
				return getTrials();
			case ModelPackage.SERIES__AIM:
				return getAim();
			case ModelPackage.SERIES__FORBIDDEN:
				return getForbidden();
			case ModelPackage.SERIES__PROVISIONS:
				return getProvisions();
			case ModelPackage.SERIES__LABOUR:
				return getLabour();
			case ModelPackage.SERIES__PLANS:
				return getPlans();
			case ModelPackage.SERIES__MOST_TRIALS:
				return getMostTrials();
			case ModelPackage.SERIES__CENTRE_TRIALS:
				return getCentreTrials();
			case ModelPackage.SERIES__REPEAT_TRIALS:
				return getRepeatTrials();
			case ModelPackage.SERIES__BURNS_PER_DAY:
				return getBurnsPerDay();
			case ModelPackage.SERIES__FURNACE_RATIO:
				return getFurnaceRatio();
			case ModelPackage.SERIES__DAY_RATIO:
				return getDayRatio();
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
			case ModelPackage.SERIES__QUESTION:
				setQuestion((String)newValue);
				return;
			case ModelPackage.SERIES__PLAN:
				setPlan((String)newValue);
				return;
			case ModelPackage.SERIES__BUDGET:
				setBudget((String)newValue);
				return;
			case ModelPackage.SERIES__FROZEN:
				setFrozen((Boolean)newValue);
				return;
			case ModelPackage.SERIES__SEED:
				setSeed((Long)newValue);
				return;
			case ModelPackage.SERIES__STOP_CRITERIA:
				setStopCriteria((String)newValue);
				return;
			case ModelPackage.SERIES__FACTORS:
				getFactors().clear();
				getFactors().addAll((Collection<? extends Factor>)newValue);
				return;
			case ModelPackage.SERIES__ROLES:
				getRoles().clear();
				getRoles().addAll((Collection<? extends RoleAssignment>)newValue);
				return;
			case ModelPackage.SERIES__TRIALS:
				getTrials().clear();
				getTrials().addAll((Collection<? extends Trial>)newValue);
				return;
			case ModelPackage.SERIES__AIM:
				setAim((String)newValue);
				return;
			case ModelPackage.SERIES__FORBIDDEN:
				getForbidden().clear();
				getForbidden().addAll((Collection<? extends ForbiddenCombination>)newValue);
				return;
			case ModelPackage.SERIES__PROVISIONS:
				getProvisions().clear();
				getProvisions().addAll((Collection<? extends Provision>)newValue);
				return;
			case ModelPackage.SERIES__LABOUR:
				setLabour((Labour)newValue);
				return;
			case ModelPackage.SERIES__PLANS:
				getPlans().clear();
				getPlans().addAll((Collection<? extends FrozenPlan>)newValue);
				return;
			case ModelPackage.SERIES__MOST_TRIALS:
				setMostTrials((Integer)newValue);
				return;
			case ModelPackage.SERIES__CENTRE_TRIALS:
				setCentreTrials((Integer)newValue);
				return;
			case ModelPackage.SERIES__REPEAT_TRIALS:
				setRepeatTrials((Integer)newValue);
				return;
			case ModelPackage.SERIES__BURNS_PER_DAY:
				setBurnsPerDay((Integer)newValue);
				return;
			case ModelPackage.SERIES__FURNACE_RATIO:
				setFurnaceRatio((Double)newValue);
				return;
			case ModelPackage.SERIES__DAY_RATIO:
				setDayRatio((Double)newValue);
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
			case ModelPackage.SERIES__QUESTION:
				setQuestion(QUESTION_EDEFAULT);
				return;
			case ModelPackage.SERIES__PLAN:
				setPlan(PLAN_EDEFAULT);
				return;
			case ModelPackage.SERIES__BUDGET:
				setBudget(BUDGET_EDEFAULT);
				return;
			case ModelPackage.SERIES__FROZEN:
				setFrozen(FROZEN_EDEFAULT);
				return;
			case ModelPackage.SERIES__SEED:
				setSeed(SEED_EDEFAULT);
				return;
			case ModelPackage.SERIES__STOP_CRITERIA:
				setStopCriteria(STOP_CRITERIA_EDEFAULT);
				return;
			case ModelPackage.SERIES__FACTORS:
				getFactors().clear();
				return;
			case ModelPackage.SERIES__ROLES:
				getRoles().clear();
				return;
			case ModelPackage.SERIES__TRIALS:
				getTrials().clear();
				return;
			case ModelPackage.SERIES__AIM:
				setAim(AIM_EDEFAULT);
				return;
			case ModelPackage.SERIES__FORBIDDEN:
				getForbidden().clear();
				return;
			case ModelPackage.SERIES__PROVISIONS:
				getProvisions().clear();
				return;
			case ModelPackage.SERIES__LABOUR:
				setLabour((Labour)null);
				return;
			case ModelPackage.SERIES__PLANS:
				getPlans().clear();
				return;
			case ModelPackage.SERIES__MOST_TRIALS:
				setMostTrials(MOST_TRIALS_EDEFAULT);
				return;
			case ModelPackage.SERIES__CENTRE_TRIALS:
				setCentreTrials(CENTRE_TRIALS_EDEFAULT);
				return;
			case ModelPackage.SERIES__REPEAT_TRIALS:
				setRepeatTrials(REPEAT_TRIALS_EDEFAULT);
				return;
			case ModelPackage.SERIES__BURNS_PER_DAY:
				setBurnsPerDay(BURNS_PER_DAY_EDEFAULT);
				return;
			case ModelPackage.SERIES__FURNACE_RATIO:
				setFurnaceRatio(FURNACE_RATIO_EDEFAULT);
				return;
			case ModelPackage.SERIES__DAY_RATIO:
				setDayRatio(DAY_RATIO_EDEFAULT);
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
			case ModelPackage.SERIES__QUESTION:
				return QUESTION_EDEFAULT == null ? question != null : !QUESTION_EDEFAULT.equals(question);
			case ModelPackage.SERIES__PLAN:
				return PLAN_EDEFAULT == null ? plan != null : !PLAN_EDEFAULT.equals(plan);
			case ModelPackage.SERIES__BUDGET:
				return BUDGET_EDEFAULT == null ? budget != null : !BUDGET_EDEFAULT.equals(budget);
			case ModelPackage.SERIES__FROZEN:
				return frozen != FROZEN_EDEFAULT;
			case ModelPackage.SERIES__SEED:
				return SEED_EDEFAULT == null ? seed != null : !SEED_EDEFAULT.equals(seed);
			case ModelPackage.SERIES__STOP_CRITERIA:
				return STOP_CRITERIA_EDEFAULT == null ? stopCriteria != null : !STOP_CRITERIA_EDEFAULT.equals(stopCriteria);
			case ModelPackage.SERIES__FACTORS:
				return factors != null && !factors.isEmpty();
			case ModelPackage.SERIES__ROLES:
				return roles != null && !roles.isEmpty();
			case ModelPackage.SERIES__TRIALS:
				return trials != null && !trials.isEmpty();
			case ModelPackage.SERIES__AIM:
				return AIM_EDEFAULT == null ? aim != null : !AIM_EDEFAULT.equals(aim);
			case ModelPackage.SERIES__FORBIDDEN:
				return forbidden != null && !forbidden.isEmpty();
			case ModelPackage.SERIES__PROVISIONS:
				return provisions != null && !provisions.isEmpty();
			case ModelPackage.SERIES__LABOUR:
				return labour != null;
			case ModelPackage.SERIES__PLANS:
				return plans != null && !plans.isEmpty();
			case ModelPackage.SERIES__MOST_TRIALS:
				return MOST_TRIALS_EDEFAULT == null ? mostTrials != null : !MOST_TRIALS_EDEFAULT.equals(mostTrials);
			case ModelPackage.SERIES__CENTRE_TRIALS:
				return CENTRE_TRIALS_EDEFAULT == null ? centreTrials != null : !CENTRE_TRIALS_EDEFAULT.equals(centreTrials);
			case ModelPackage.SERIES__REPEAT_TRIALS:
				return REPEAT_TRIALS_EDEFAULT == null ? repeatTrials != null : !REPEAT_TRIALS_EDEFAULT.equals(repeatTrials);
			case ModelPackage.SERIES__BURNS_PER_DAY:
				return BURNS_PER_DAY_EDEFAULT == null ? burnsPerDay != null : !BURNS_PER_DAY_EDEFAULT.equals(burnsPerDay);
			case ModelPackage.SERIES__FURNACE_RATIO:
				return FURNACE_RATIO_EDEFAULT == null ? furnaceRatio != null : !FURNACE_RATIO_EDEFAULT.equals(furnaceRatio);
			case ModelPackage.SERIES__DAY_RATIO:
				return DAY_RATIO_EDEFAULT == null ? dayRatio != null : !DAY_RATIO_EDEFAULT.equals(dayRatio);
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
		result.append(" (question: ");
		result.append(question);
		result.append(", plan: ");
		result.append(plan);
		result.append(", budget: ");
		result.append(budget);
		result.append(", frozen: ");
		result.append(frozen);
		result.append(", seed: ");
		result.append(seed);
		result.append(", stopCriteria: ");
		result.append(stopCriteria);
		result.append(", aim: ");
		result.append(aim);
		result.append(", mostTrials: ");
		result.append(mostTrials);
		result.append(", centreTrials: ");
		result.append(centreTrials);
		result.append(", repeatTrials: ");
		result.append(repeatTrials);
		result.append(", burnsPerDay: ");
		result.append(burnsPerDay);
		result.append(", furnaceRatio: ");
		result.append(furnaceRatio);
		result.append(", dayRatio: ");
		result.append(dayRatio);
		result.append(')');
		return result.toString();
	}

} //SeriesImpl
