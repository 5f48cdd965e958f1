/**
 */
package daubline.model.impl;

import daubline.model.ModelPackage;
import daubline.model.VariableDefinition;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Variable Definition</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getName <em>Name</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getGroup <em>Group</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getType <em>Type</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getLow <em>Low</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getHigh <em>High</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getStages <em>Stages</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getCategories <em>Categories</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getEvidencedBy <em>Evidenced By</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getMeaning <em>Meaning</em>}</li>
 *   <li>{@link daubline.model.impl.VariableDefinitionImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class VariableDefinitionImpl extends IdentifiedImpl implements VariableDefinition {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getGroup() <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroup()
	 * @generated
	 * @ordered
	 */
	protected static final String GROUP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGroup() <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroup()
	 * @generated
	 * @ordered
	 */
	protected String group = GROUP_EDEFAULT;

	/**
	 * The default value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected static final String TYPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getType() <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getType()
	 * @generated
	 * @ordered
	 */
	protected String type = TYPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected static final String QUANTITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected String quantity = QUANTITY_EDEFAULT;

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
	 * The default value of the '{@link #getLow() <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLow()
	 * @generated
	 * @ordered
	 */
	protected static final Double LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLow() <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLow()
	 * @generated
	 * @ordered
	 */
	protected Double low = LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getHigh() <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHigh()
	 * @generated
	 * @ordered
	 */
	protected static final Double HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHigh() <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHigh()
	 * @generated
	 * @ordered
	 */
	protected Double high = HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #getStages() <em>Stages</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStages()
	 * @generated
	 * @ordered
	 */
	protected static final String STAGES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStages() <em>Stages</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStages()
	 * @generated
	 * @ordered
	 */
	protected String stages = STAGES_EDEFAULT;

	/**
	 * The default value of the '{@link #getCategories() <em>Categories</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCategories()
	 * @generated
	 * @ordered
	 */
	protected static final String CATEGORIES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCategories() <em>Categories</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCategories()
	 * @generated
	 * @ordered
	 */
	protected String categories = CATEGORIES_EDEFAULT;

	/**
	 * The default value of the '{@link #getEvidencedBy() <em>Evidenced By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEvidencedBy()
	 * @generated
	 * @ordered
	 */
	protected static final String EVIDENCED_BY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEvidencedBy() <em>Evidenced By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEvidencedBy()
	 * @generated
	 * @ordered
	 */
	protected String evidencedBy = EVIDENCED_BY_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeaning() <em>Meaning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeaning()
	 * @generated
	 * @ordered
	 */
	protected static final String MEANING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeaning() <em>Meaning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeaning()
	 * @generated
	 * @ordered
	 */
	protected String meaning = MEANING_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected VariableDefinitionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.VARIABLE_DEFINITION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getGroup() {
		return group;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroup(String newGroup) {
		String oldGroup = group;
		group = newGroup;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__GROUP, oldGroup, group));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getType() {
		return type;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setType(String newType) {
		String oldType = type;
		type = newType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__TYPE, oldType, type));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getQuantity() {
		return quantity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuantity(String newQuantity) {
		String oldQuantity = quantity;
		quantity = newQuantity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__QUANTITY, oldQuantity, quantity));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLow() {
		return low;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLow(Double newLow) {
		Double oldLow = low;
		low = newLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__LOW, oldLow, low));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHigh() {
		return high;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHigh(Double newHigh) {
		Double oldHigh = high;
		high = newHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__HIGH, oldHigh, high));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStages() {
		return stages;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStages(String newStages) {
		String oldStages = stages;
		stages = newStages;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__STAGES, oldStages, stages));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCategories() {
		return categories;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCategories(String newCategories) {
		String oldCategories = categories;
		categories = newCategories;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__CATEGORIES, oldCategories, categories));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEvidencedBy() {
		return evidencedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEvidencedBy(String newEvidencedBy) {
		String oldEvidencedBy = evidencedBy;
		evidencedBy = newEvidencedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__EVIDENCED_BY, oldEvidencedBy, evidencedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMeaning() {
		return meaning;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeaning(String newMeaning) {
		String oldMeaning = meaning;
		meaning = newMeaning;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__MEANING, oldMeaning, meaning));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VARIABLE_DEFINITION__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.VARIABLE_DEFINITION__NAME:
				return getName();
			case ModelPackage.VARIABLE_DEFINITION__GROUP:
				return getGroup();
			case ModelPackage.VARIABLE_DEFINITION__TYPE:
				return getType();
			case ModelPackage.VARIABLE_DEFINITION__QUANTITY:
				return getQuantity();
			case ModelPackage.VARIABLE_DEFINITION__UNIT:
				return getUnit();
			case ModelPackage.VARIABLE_DEFINITION__LOW:
				return getLow();
			case ModelPackage.VARIABLE_DEFINITION__HIGH:
				return getHigh();
			case ModelPackage.VARIABLE_DEFINITION__STAGES:
				return getStages();
			case ModelPackage.VARIABLE_DEFINITION__CATEGORIES:
				return getCategories();
			case ModelPackage.VARIABLE_DEFINITION__EVIDENCED_BY:
				return getEvidencedBy();
			case ModelPackage.VARIABLE_DEFINITION__MEANING:
				return getMeaning();
			case ModelPackage.VARIABLE_DEFINITION__SOURCE:
				return getSource();
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
			case ModelPackage.VARIABLE_DEFINITION__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__GROUP:
				setGroup((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__TYPE:
				setType((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__QUANTITY:
				setQuantity((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__UNIT:
				setUnit((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__LOW:
				setLow((Double)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__HIGH:
				setHigh((Double)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__STAGES:
				setStages((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__CATEGORIES:
				setCategories((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__EVIDENCED_BY:
				setEvidencedBy((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__MEANING:
				setMeaning((String)newValue);
				return;
			case ModelPackage.VARIABLE_DEFINITION__SOURCE:
				setSource((String)newValue);
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
			case ModelPackage.VARIABLE_DEFINITION__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__GROUP:
				setGroup(GROUP_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__TYPE:
				setType(TYPE_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__QUANTITY:
				setQuantity(QUANTITY_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__LOW:
				setLow(LOW_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__HIGH:
				setHigh(HIGH_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__STAGES:
				setStages(STAGES_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__CATEGORIES:
				setCategories(CATEGORIES_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__EVIDENCED_BY:
				setEvidencedBy(EVIDENCED_BY_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__MEANING:
				setMeaning(MEANING_EDEFAULT);
				return;
			case ModelPackage.VARIABLE_DEFINITION__SOURCE:
				setSource(SOURCE_EDEFAULT);
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
			case ModelPackage.VARIABLE_DEFINITION__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.VARIABLE_DEFINITION__GROUP:
				return GROUP_EDEFAULT == null ? group != null : !GROUP_EDEFAULT.equals(group);
			case ModelPackage.VARIABLE_DEFINITION__TYPE:
				return TYPE_EDEFAULT == null ? type != null : !TYPE_EDEFAULT.equals(type);
			case ModelPackage.VARIABLE_DEFINITION__QUANTITY:
				return QUANTITY_EDEFAULT == null ? quantity != null : !QUANTITY_EDEFAULT.equals(quantity);
			case ModelPackage.VARIABLE_DEFINITION__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
			case ModelPackage.VARIABLE_DEFINITION__LOW:
				return LOW_EDEFAULT == null ? low != null : !LOW_EDEFAULT.equals(low);
			case ModelPackage.VARIABLE_DEFINITION__HIGH:
				return HIGH_EDEFAULT == null ? high != null : !HIGH_EDEFAULT.equals(high);
			case ModelPackage.VARIABLE_DEFINITION__STAGES:
				return STAGES_EDEFAULT == null ? stages != null : !STAGES_EDEFAULT.equals(stages);
			case ModelPackage.VARIABLE_DEFINITION__CATEGORIES:
				return CATEGORIES_EDEFAULT == null ? categories != null : !CATEGORIES_EDEFAULT.equals(categories);
			case ModelPackage.VARIABLE_DEFINITION__EVIDENCED_BY:
				return EVIDENCED_BY_EDEFAULT == null ? evidencedBy != null : !EVIDENCED_BY_EDEFAULT.equals(evidencedBy);
			case ModelPackage.VARIABLE_DEFINITION__MEANING:
				return MEANING_EDEFAULT == null ? meaning != null : !MEANING_EDEFAULT.equals(meaning);
			case ModelPackage.VARIABLE_DEFINITION__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", group: ");
		result.append(group);
		result.append(", type: ");
		result.append(type);
		result.append(", quantity: ");
		result.append(quantity);
		result.append(", unit: ");
		result.append(unit);
		result.append(", low: ");
		result.append(low);
		result.append(", high: ");
		result.append(high);
		result.append(", stages: ");
		result.append(stages);
		result.append(", categories: ");
		result.append(categories);
		result.append(", evidencedBy: ");
		result.append(evidencedBy);
		result.append(", meaning: ");
		result.append(meaning);
		result.append(", source: ");
		result.append(source);
		result.append(')');
		return result.toString();
	}

} //VariableDefinitionImpl
