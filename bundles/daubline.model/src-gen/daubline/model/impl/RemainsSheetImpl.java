/**
 */
package daubline.model.impl;

import daubline.model.ModelPackage;
import daubline.model.RemainsSheet;

import org.eclipse.emf.ecore.EClass;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Remains Sheet</b></em>'.
 * <!-- end-user-doc -->
 *
 * @generated
 */
public class RemainsSheetImpl extends SheetImpl implements RemainsSheet {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RemainsSheetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.REMAINS_SHEET;
	}

} //RemainsSheetImpl
