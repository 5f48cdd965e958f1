/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Treatment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One step that a lot went through; masses in kg.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Treatment#getStep <em>Step</em>}</li>
 *   <li>{@link daubline.model.Treatment#getOn <em>On</em>}</li>
 *   <li>{@link daubline.model.Treatment#getMassIn <em>Mass In</em>}</li>
 *   <li>{@link daubline.model.Treatment#getMassOut <em>Mass Out</em>}</li>
 *   <li>{@link daubline.model.Treatment#getLost <em>Lost</em>}</li>
 *   <li>{@link daubline.model.Treatment#getSigma <em>Sigma</em>}</li>
 *   <li>{@link daubline.model.Treatment#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.Treatment#getBands <em>Bands</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getTreatment()
 * @model
 * @generated
 */
public interface Treatment extends Named {
	/**
	 * Returns the value of the '<em><b>Step</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Step</em>' attribute.
	 * @see #setStep(String)
	 * @see daubline.model.ModelPackage#getTreatment_Step()
	 * @model
	 * @generated
	 */
	String getStep();

	/**
	 * Sets the value of the '{@link daubline.model.Treatment#getStep <em>Step</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Step</em>' attribute.
	 * @see #getStep()
	 * @generated
	 */
	void setStep(String value);

	/**
	 * Returns the value of the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>On</em>' attribute.
	 * @see #setOn(String)
	 * @see daubline.model.ModelPackage#getTreatment_On()
	 * @model
	 * @generated
	 */
	String getOn();

	/**
	 * Sets the value of the '{@link daubline.model.Treatment#getOn <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On</em>' attribute.
	 * @see #getOn()
	 * @generated
	 */
	void setOn(String value);

	/**
	 * Returns the value of the '<em><b>Mass In</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass In</em>' attribute.
	 * @see #setMassIn(Double)
	 * @see daubline.model.ModelPackage#getTreatment_MassIn()
	 * @model
	 * @generated
	 */
	Double getMassIn();

	/**
	 * Sets the value of the '{@link daubline.model.Treatment#getMassIn <em>Mass In</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass In</em>' attribute.
	 * @see #getMassIn()
	 * @generated
	 */
	void setMassIn(Double value);

	/**
	 * Returns the value of the '<em><b>Mass Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass Out</em>' attribute.
	 * @see #setMassOut(Double)
	 * @see daubline.model.ModelPackage#getTreatment_MassOut()
	 * @model
	 * @generated
	 */
	Double getMassOut();

	/**
	 * Sets the value of the '{@link daubline.model.Treatment#getMassOut <em>Mass Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass Out</em>' attribute.
	 * @see #getMassOut()
	 * @generated
	 */
	void setMassOut(Double value);

	/**
	 * Returns the value of the '<em><b>Lost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lost</em>' attribute.
	 * @see #setLost(Double)
	 * @see daubline.model.ModelPackage#getTreatment_Lost()
	 * @model
	 * @generated
	 */
	Double getLost();

	/**
	 * Sets the value of the '{@link daubline.model.Treatment#getLost <em>Lost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lost</em>' attribute.
	 * @see #getLost()
	 * @generated
	 */
	void setLost(Double value);

	/**
	 * Returns the value of the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sigma</em>' attribute.
	 * @see #setSigma(Double)
	 * @see daubline.model.ModelPackage#getTreatment_Sigma()
	 * @model
	 * @generated
	 */
	Double getSigma();

	/**
	 * Sets the value of the '{@link daubline.model.Treatment#getSigma <em>Sigma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sigma</em>' attribute.
	 * @see #getSigma()
	 * @generated
	 */
	void setSigma(Double value);

	/**
	 * Returns the value of the '<em><b>Values</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Values</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTreatment_Values()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reading> getValues();

	/**
	 * Returns the value of the '<em><b>Bands</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.SizeBand}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bands</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTreatment_Bands()
	 * @model containment="true"
	 * @generated
	 */
	EList<SizeBand> getBands();

} // Treatment
