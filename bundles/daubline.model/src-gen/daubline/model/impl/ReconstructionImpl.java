/**
 */
package daubline.model.impl;

import daubline.model.Choice;
import daubline.model.EvidenceSheet;
import daubline.model.ModelPackage;
import daubline.model.Reconstruction;

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
 * An implementation of the model object '<em><b>Reconstruction</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.ReconstructionImpl#getHypothesis <em>Hypothesis</em>}</li>
 *   <li>{@link daubline.model.impl.ReconstructionImpl#getVariantOf <em>Variant Of</em>}</li>
 *   <li>{@link daubline.model.impl.ReconstructionImpl#getSheets <em>Sheets</em>}</li>
 *   <li>{@link daubline.model.impl.ReconstructionImpl#isRetired <em>Retired</em>}</li>
 *   <li>{@link daubline.model.impl.ReconstructionImpl#getRetiredBecause <em>Retired Because</em>}</li>
 *   <li>{@link daubline.model.impl.ReconstructionImpl#getChoices <em>Choices</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReconstructionImpl extends NamedImpl implements Reconstruction {
	/**
	 * The default value of the '{@link #getHypothesis() <em>Hypothesis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHypothesis()
	 * @generated
	 * @ordered
	 */
	protected static final String HYPOTHESIS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHypothesis() <em>Hypothesis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHypothesis()
	 * @generated
	 * @ordered
	 */
	protected String hypothesis = HYPOTHESIS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getVariantOf() <em>Variant Of</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVariantOf()
	 * @generated
	 * @ordered
	 */
	protected Reconstruction variantOf;

	/**
	 * The cached value of the '{@link #getSheets() <em>Sheets</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheets()
	 * @generated
	 * @ordered
	 */
	protected EList<EvidenceSheet> sheets;

	/**
	 * The default value of the '{@link #isRetired() <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRetired()
	 * @generated
	 * @ordered
	 */
	protected static final boolean RETIRED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRetired() <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRetired()
	 * @generated
	 * @ordered
	 */
	protected boolean retired = RETIRED_EDEFAULT;

	/**
	 * The default value of the '{@link #getRetiredBecause() <em>Retired Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRetiredBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String RETIRED_BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRetiredBecause() <em>Retired Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRetiredBecause()
	 * @generated
	 * @ordered
	 */
	protected String retiredBecause = RETIRED_BECAUSE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getChoices() <em>Choices</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChoices()
	 * @generated
	 * @ordered
	 */
	protected EList<Choice> choices;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReconstructionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.RECONSTRUCTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getHypothesis() {
		return hypothesis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHypothesis(String newHypothesis) {
		String oldHypothesis = hypothesis;
		hypothesis = newHypothesis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECONSTRUCTION__HYPOTHESIS, oldHypothesis, hypothesis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reconstruction getVariantOf() {
		if (variantOf != null && variantOf.eIsProxy()) {
			InternalEObject oldVariantOf = (InternalEObject)variantOf;
			variantOf = (Reconstruction)eResolveProxy(oldVariantOf);
			if (variantOf != oldVariantOf) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.RECONSTRUCTION__VARIANT_OF, oldVariantOf, variantOf));
			}
		}
		return variantOf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Reconstruction basicGetVariantOf() {
		return variantOf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVariantOf(Reconstruction newVariantOf) {
		Reconstruction oldVariantOf = variantOf;
		variantOf = newVariantOf;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECONSTRUCTION__VARIANT_OF, oldVariantOf, variantOf));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<EvidenceSheet> getSheets() {
		if (sheets == null) {
			sheets = new EObjectResolvingEList<EvidenceSheet>(EvidenceSheet.class, this, ModelPackage.RECONSTRUCTION__SHEETS);
		}
		return sheets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRetired() {
		return retired;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRetired(boolean newRetired) {
		boolean oldRetired = retired;
		retired = newRetired;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECONSTRUCTION__RETIRED, oldRetired, retired));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRetiredBecause() {
		return retiredBecause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRetiredBecause(String newRetiredBecause) {
		String oldRetiredBecause = retiredBecause;
		retiredBecause = newRetiredBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.RECONSTRUCTION__RETIRED_BECAUSE, oldRetiredBecause, retiredBecause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Choice> getChoices() {
		if (choices == null) {
			choices = new EObjectContainmentEList<Choice>(Choice.class, this, ModelPackage.RECONSTRUCTION__CHOICES);
		}
		return choices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.RECONSTRUCTION__CHOICES:
				return ((InternalEList<?>)getChoices()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.RECONSTRUCTION__HYPOTHESIS:
				return getHypothesis();
			case ModelPackage.RECONSTRUCTION__VARIANT_OF:
				if (resolve) return getVariantOf();
				return basicGetVariantOf();
			case ModelPackage.RECONSTRUCTION__SHEETS:
				return getSheets();
			case ModelPackage.RECONSTRUCTION__RETIRED:
				return isRetired();
			case ModelPackage.RECONSTRUCTION__RETIRED_BECAUSE:
				return getRetiredBecause();
			case ModelPackage.RECONSTRUCTION__CHOICES:
				return getChoices();
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
			case ModelPackage.RECONSTRUCTION__HYPOTHESIS:
				setHypothesis((String)newValue);
				return;
			case ModelPackage.RECONSTRUCTION__VARIANT_OF:
				setVariantOf((Reconstruction)newValue);
				return;
			case ModelPackage.RECONSTRUCTION__SHEETS:
				getSheets().clear();
				getSheets().addAll((Collection<? extends EvidenceSheet>)newValue);
				return;
			case ModelPackage.RECONSTRUCTION__RETIRED:
				setRetired((Boolean)newValue);
				return;
			case ModelPackage.RECONSTRUCTION__RETIRED_BECAUSE:
				setRetiredBecause((String)newValue);
				return;
			case ModelPackage.RECONSTRUCTION__CHOICES:
				getChoices().clear();
				getChoices().addAll((Collection<? extends Choice>)newValue);
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
			case ModelPackage.RECONSTRUCTION__HYPOTHESIS:
				setHypothesis(HYPOTHESIS_EDEFAULT);
				return;
			case ModelPackage.RECONSTRUCTION__VARIANT_OF:
				setVariantOf((Reconstruction)null);
				return;
			case ModelPackage.RECONSTRUCTION__SHEETS:
				getSheets().clear();
				return;
			case ModelPackage.RECONSTRUCTION__RETIRED:
				setRetired(RETIRED_EDEFAULT);
				return;
			case ModelPackage.RECONSTRUCTION__RETIRED_BECAUSE:
				setRetiredBecause(RETIRED_BECAUSE_EDEFAULT);
				return;
			case ModelPackage.RECONSTRUCTION__CHOICES:
				getChoices().clear();
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
			case ModelPackage.RECONSTRUCTION__HYPOTHESIS:
				return HYPOTHESIS_EDEFAULT == null ? hypothesis != null : !HYPOTHESIS_EDEFAULT.equals(hypothesis);
			case ModelPackage.RECONSTRUCTION__VARIANT_OF:
				return variantOf != null;
			case ModelPackage.RECONSTRUCTION__SHEETS:
				return sheets != null && !sheets.isEmpty();
			case ModelPackage.RECONSTRUCTION__RETIRED:
				return retired != RETIRED_EDEFAULT;
			case ModelPackage.RECONSTRUCTION__RETIRED_BECAUSE:
				return RETIRED_BECAUSE_EDEFAULT == null ? retiredBecause != null : !RETIRED_BECAUSE_EDEFAULT.equals(retiredBecause);
			case ModelPackage.RECONSTRUCTION__CHOICES:
				return choices != null && !choices.isEmpty();
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
		result.append(" (hypothesis: ");
		result.append(hypothesis);
		result.append(", retired: ");
		result.append(retired);
		result.append(", retiredBecause: ");
		result.append(retiredBecause);
		result.append(')');
		return result.toString();
	}

} //ReconstructionImpl
