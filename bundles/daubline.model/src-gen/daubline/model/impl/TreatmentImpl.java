/**
 */
package daubline.model.impl;

import daubline.model.ModelPackage;
import daubline.model.Reading;
import daubline.model.SizeBand;
import daubline.model.Treatment;

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
 * An implementation of the model object '<em><b>Treatment</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.TreatmentImpl#getStep <em>Step</em>}</li>
 *   <li>{@link daubline.model.impl.TreatmentImpl#getOn <em>On</em>}</li>
 *   <li>{@link daubline.model.impl.TreatmentImpl#getMassIn <em>Mass In</em>}</li>
 *   <li>{@link daubline.model.impl.TreatmentImpl#getMassOut <em>Mass Out</em>}</li>
 *   <li>{@link daubline.model.impl.TreatmentImpl#getLost <em>Lost</em>}</li>
 *   <li>{@link daubline.model.impl.TreatmentImpl#getSigma <em>Sigma</em>}</li>
 *   <li>{@link daubline.model.impl.TreatmentImpl#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.impl.TreatmentImpl#getBands <em>Bands</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TreatmentImpl extends NamedImpl implements Treatment {
	/**
	 * The default value of the '{@link #getStep() <em>Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStep()
	 * @generated
	 * @ordered
	 */
	protected static final String STEP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStep() <em>Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStep()
	 * @generated
	 * @ordered
	 */
	protected String step = STEP_EDEFAULT;

	/**
	 * The default value of the '{@link #getOn() <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOn()
	 * @generated
	 * @ordered
	 */
	protected static final String ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOn() <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOn()
	 * @generated
	 * @ordered
	 */
	protected String on = ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getMassIn() <em>Mass In</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassIn()
	 * @generated
	 * @ordered
	 */
	protected static final Double MASS_IN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMassIn() <em>Mass In</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassIn()
	 * @generated
	 * @ordered
	 */
	protected Double massIn = MASS_IN_EDEFAULT;

	/**
	 * The default value of the '{@link #getMassOut() <em>Mass Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassOut()
	 * @generated
	 * @ordered
	 */
	protected static final Double MASS_OUT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMassOut() <em>Mass Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassOut()
	 * @generated
	 * @ordered
	 */
	protected Double massOut = MASS_OUT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLost() <em>Lost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLost()
	 * @generated
	 * @ordered
	 */
	protected static final Double LOST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLost() <em>Lost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLost()
	 * @generated
	 * @ordered
	 */
	protected Double lost = LOST_EDEFAULT;

	/**
	 * The default value of the '{@link #getSigma() <em>Sigma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSigma()
	 * @generated
	 * @ordered
	 */
	protected static final Double SIGMA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSigma() <em>Sigma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSigma()
	 * @generated
	 * @ordered
	 */
	protected Double sigma = SIGMA_EDEFAULT;

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
	 * The cached value of the '{@link #getBands() <em>Bands</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBands()
	 * @generated
	 * @ordered
	 */
	protected EList<SizeBand> bands;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TreatmentImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.TREATMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStep() {
		return step;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStep(String newStep) {
		String oldStep = step;
		step = newStep;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TREATMENT__STEP, oldStep, step));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOn() {
		return on;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOn(String newOn) {
		String oldOn = on;
		on = newOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TREATMENT__ON, oldOn, on));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMassIn() {
		return massIn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMassIn(Double newMassIn) {
		Double oldMassIn = massIn;
		massIn = newMassIn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TREATMENT__MASS_IN, oldMassIn, massIn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMassOut() {
		return massOut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMassOut(Double newMassOut) {
		Double oldMassOut = massOut;
		massOut = newMassOut;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TREATMENT__MASS_OUT, oldMassOut, massOut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLost() {
		return lost;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLost(Double newLost) {
		Double oldLost = lost;
		lost = newLost;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TREATMENT__LOST, oldLost, lost));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSigma() {
		return sigma;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSigma(Double newSigma) {
		Double oldSigma = sigma;
		sigma = newSigma;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TREATMENT__SIGMA, oldSigma, sigma));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Reading> getValues() {
		if (values == null) {
			values = new EObjectContainmentEList<Reading>(Reading.class, this, ModelPackage.TREATMENT__VALUES);
		}
		return values;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SizeBand> getBands() {
		if (bands == null) {
			bands = new EObjectContainmentEList<SizeBand>(SizeBand.class, this, ModelPackage.TREATMENT__BANDS);
		}
		return bands;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.TREATMENT__VALUES:
				return ((InternalEList<?>)getValues()).basicRemove(otherEnd, msgs);
			case ModelPackage.TREATMENT__BANDS:
				return ((InternalEList<?>)getBands()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.TREATMENT__STEP:
				return getStep();
			case ModelPackage.TREATMENT__ON:
				return getOn();
			case ModelPackage.TREATMENT__MASS_IN:
				return getMassIn();
			case ModelPackage.TREATMENT__MASS_OUT:
				return getMassOut();
			case ModelPackage.TREATMENT__LOST:
				return getLost();
			case ModelPackage.TREATMENT__SIGMA:
				return getSigma();
			case ModelPackage.TREATMENT__VALUES:
				return getValues();
			case ModelPackage.TREATMENT__BANDS:
				return getBands();
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
			case ModelPackage.TREATMENT__STEP:
				setStep((String)newValue);
				return;
			case ModelPackage.TREATMENT__ON:
				setOn((String)newValue);
				return;
			case ModelPackage.TREATMENT__MASS_IN:
				setMassIn((Double)newValue);
				return;
			case ModelPackage.TREATMENT__MASS_OUT:
				setMassOut((Double)newValue);
				return;
			case ModelPackage.TREATMENT__LOST:
				setLost((Double)newValue);
				return;
			case ModelPackage.TREATMENT__SIGMA:
				setSigma((Double)newValue);
				return;
			case ModelPackage.TREATMENT__VALUES:
				getValues().clear();
				getValues().addAll((Collection<? extends Reading>)newValue);
				return;
			case ModelPackage.TREATMENT__BANDS:
				getBands().clear();
				getBands().addAll((Collection<? extends SizeBand>)newValue);
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
			case ModelPackage.TREATMENT__STEP:
				setStep(STEP_EDEFAULT);
				return;
			case ModelPackage.TREATMENT__ON:
				setOn(ON_EDEFAULT);
				return;
			case ModelPackage.TREATMENT__MASS_IN:
				setMassIn(MASS_IN_EDEFAULT);
				return;
			case ModelPackage.TREATMENT__MASS_OUT:
				setMassOut(MASS_OUT_EDEFAULT);
				return;
			case ModelPackage.TREATMENT__LOST:
				setLost(LOST_EDEFAULT);
				return;
			case ModelPackage.TREATMENT__SIGMA:
				setSigma(SIGMA_EDEFAULT);
				return;
			case ModelPackage.TREATMENT__VALUES:
				getValues().clear();
				return;
			case ModelPackage.TREATMENT__BANDS:
				getBands().clear();
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
			case ModelPackage.TREATMENT__STEP:
				return STEP_EDEFAULT == null ? step != null : !STEP_EDEFAULT.equals(step);
			case ModelPackage.TREATMENT__ON:
				return ON_EDEFAULT == null ? on != null : !ON_EDEFAULT.equals(on);
			case ModelPackage.TREATMENT__MASS_IN:
				return MASS_IN_EDEFAULT == null ? massIn != null : !MASS_IN_EDEFAULT.equals(massIn);
			case ModelPackage.TREATMENT__MASS_OUT:
				return MASS_OUT_EDEFAULT == null ? massOut != null : !MASS_OUT_EDEFAULT.equals(massOut);
			case ModelPackage.TREATMENT__LOST:
				return LOST_EDEFAULT == null ? lost != null : !LOST_EDEFAULT.equals(lost);
			case ModelPackage.TREATMENT__SIGMA:
				return SIGMA_EDEFAULT == null ? sigma != null : !SIGMA_EDEFAULT.equals(sigma);
			case ModelPackage.TREATMENT__VALUES:
				return values != null && !values.isEmpty();
			case ModelPackage.TREATMENT__BANDS:
				return bands != null && !bands.isEmpty();
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
		result.append(" (step: ");
		result.append(step);
		result.append(", on: ");
		result.append(on);
		result.append(", massIn: ");
		result.append(massIn);
		result.append(", massOut: ");
		result.append(massOut);
		result.append(", lost: ");
		result.append(lost);
		result.append(", sigma: ");
		result.append(sigma);
		result.append(')');
		return result.toString();
	}

} //TreatmentImpl
