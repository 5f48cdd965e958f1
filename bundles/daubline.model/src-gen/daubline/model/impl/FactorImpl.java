/**
 */
package daubline.model.impl;

import daubline.model.Factor;
import daubline.model.ModelPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Factor</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.FactorImpl#getVariable <em>Variable</em>}</li>
 *   <li>{@link daubline.model.impl.FactorImpl#getLevels <em>Levels</em>}</li>
 *   <li>{@link daubline.model.impl.FactorImpl#isHardToChange <em>Hard To Change</em>}</li>
 *   <li>{@link daubline.model.impl.FactorImpl#isDaily <em>Daily</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FactorImpl extends IdentifiedImpl implements Factor {
	/**
	 * The default value of the '{@link #getVariable() <em>Variable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVariable()
	 * @generated
	 * @ordered
	 */
	protected static final String VARIABLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVariable() <em>Variable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVariable()
	 * @generated
	 * @ordered
	 */
	protected String variable = VARIABLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLevels() <em>Levels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLevels()
	 * @generated
	 * @ordered
	 */
	protected static final String LEVELS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLevels() <em>Levels</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLevels()
	 * @generated
	 * @ordered
	 */
	protected String levels = LEVELS_EDEFAULT;

	/**
	 * The default value of the '{@link #isHardToChange() <em>Hard To Change</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isHardToChange()
	 * @generated
	 * @ordered
	 */
	protected static final boolean HARD_TO_CHANGE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isHardToChange() <em>Hard To Change</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isHardToChange()
	 * @generated
	 * @ordered
	 */
	protected boolean hardToChange = HARD_TO_CHANGE_EDEFAULT;

	/**
	 * The default value of the '{@link #isDaily() <em>Daily</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDaily()
	 * @generated
	 * @ordered
	 */
	protected static final boolean DAILY_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isDaily() <em>Daily</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isDaily()
	 * @generated
	 * @ordered
	 */
	protected boolean daily = DAILY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FactorImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.FACTOR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getVariable() {
		return variable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVariable(String newVariable) {
		String oldVariable = variable;
		variable = newVariable;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FACTOR__VARIABLE, oldVariable, variable));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLevels() {
		return levels;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevels(String newLevels) {
		String oldLevels = levels;
		levels = newLevels;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FACTOR__LEVELS, oldLevels, levels));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isHardToChange() {
		return hardToChange;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHardToChange(boolean newHardToChange) {
		boolean oldHardToChange = hardToChange;
		hardToChange = newHardToChange;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FACTOR__HARD_TO_CHANGE, oldHardToChange, hardToChange));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isDaily() {
		return daily;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDaily(boolean newDaily) {
		boolean oldDaily = daily;
		daily = newDaily;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FACTOR__DAILY, oldDaily, daily));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.FACTOR__VARIABLE:
				return getVariable();
			case ModelPackage.FACTOR__LEVELS:
				return getLevels();
			case ModelPackage.FACTOR__HARD_TO_CHANGE:
				return isHardToChange();
			case ModelPackage.FACTOR__DAILY:
				return isDaily();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.FACTOR__VARIABLE:
				setVariable((String)newValue);
				return;
			case ModelPackage.FACTOR__LEVELS:
				setLevels((String)newValue);
				return;
			case ModelPackage.FACTOR__HARD_TO_CHANGE:
				setHardToChange((Boolean)newValue);
				return;
			case ModelPackage.FACTOR__DAILY:
				setDaily((Boolean)newValue);
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
			case ModelPackage.FACTOR__VARIABLE:
				setVariable(VARIABLE_EDEFAULT);
				return;
			case ModelPackage.FACTOR__LEVELS:
				setLevels(LEVELS_EDEFAULT);
				return;
			case ModelPackage.FACTOR__HARD_TO_CHANGE:
				setHardToChange(HARD_TO_CHANGE_EDEFAULT);
				return;
			case ModelPackage.FACTOR__DAILY:
				setDaily(DAILY_EDEFAULT);
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
			case ModelPackage.FACTOR__VARIABLE:
				return VARIABLE_EDEFAULT == null ? variable != null : !VARIABLE_EDEFAULT.equals(variable);
			case ModelPackage.FACTOR__LEVELS:
				return LEVELS_EDEFAULT == null ? levels != null : !LEVELS_EDEFAULT.equals(levels);
			case ModelPackage.FACTOR__HARD_TO_CHANGE:
				return hardToChange != HARD_TO_CHANGE_EDEFAULT;
			case ModelPackage.FACTOR__DAILY:
				return daily != DAILY_EDEFAULT;
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
		result.append(" (variable: ");
		result.append(variable);
		result.append(", levels: ");
		result.append(levels);
		result.append(", hardToChange: ");
		result.append(hardToChange);
		result.append(", daily: ");
		result.append(daily);
		result.append(')');
		return result.toString();
	}

} //FactorImpl
