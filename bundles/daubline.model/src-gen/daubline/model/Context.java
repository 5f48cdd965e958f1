/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Context</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A context or phase of a site.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Context#getPeriod <em>Period</em>}</li>
 *   <li>{@link daubline.model.Context#getPhase <em>Phase</em>}</li>
 *   <li>{@link daubline.model.Context#getDeposit <em>Deposit</em>}</li>
 *   <li>{@link daubline.model.Context#getSheets <em>Sheets</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getContext()
 * @model
 * @generated
 */
public interface Context extends Named {
	/**
	 * Returns the value of the '<em><b>Period</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Period</em>' attribute.
	 * @see #setPeriod(String)
	 * @see daubline.model.ModelPackage#getContext_Period()
	 * @model
	 * @generated
	 */
	String getPeriod();

	/**
	 * Sets the value of the '{@link daubline.model.Context#getPeriod <em>Period</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Period</em>' attribute.
	 * @see #getPeriod()
	 * @generated
	 */
	void setPeriod(String value);

	/**
	 * Returns the value of the '<em><b>Phase</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Phase</em>' attribute.
	 * @see #setPhase(String)
	 * @see daubline.model.ModelPackage#getContext_Phase()
	 * @model
	 * @generated
	 */
	String getPhase();

	/**
	 * Sets the value of the '{@link daubline.model.Context#getPhase <em>Phase</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Phase</em>' attribute.
	 * @see #getPhase()
	 * @generated
	 */
	void setPhase(String value);

	/**
	 * Returns the value of the '<em><b>Deposit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Deposit</em>' attribute.
	 * @see #setDeposit(String)
	 * @see daubline.model.ModelPackage#getContext_Deposit()
	 * @model
	 * @generated
	 */
	String getDeposit();

	/**
	 * Sets the value of the '{@link daubline.model.Context#getDeposit <em>Deposit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Deposit</em>' attribute.
	 * @see #getDeposit()
	 * @generated
	 */
	void setDeposit(String value);

	/**
	 * Returns the value of the '<em><b>Sheets</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.EvidenceSheet}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheets</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getContext_Sheets()
	 * @model containment="true"
	 * @generated
	 */
	EList<EvidenceSheet> getSheets();

} // Context
