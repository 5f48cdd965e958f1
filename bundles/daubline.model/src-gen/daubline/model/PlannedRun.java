/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Planned Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One trial of a frozen plan: its place in the order, its furnace and its settings.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.PlannedRun#getPlace <em>Place</em>}</li>
 *   <li>{@link daubline.model.PlannedRun#getFurnace <em>Furnace</em>}</li>
 *   <li>{@link daubline.model.PlannedRun#getDay <em>Day</em>}</li>
 *   <li>{@link daubline.model.PlannedRun#getTrial <em>Trial</em>}</li>
 *   <li>{@link daubline.model.PlannedRun#getSettings <em>Settings</em>}</li>
 *   <li>{@link daubline.model.PlannedRun#getDeviation <em>Deviation</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getPlannedRun()
 * @model
 * @generated
 */
public interface PlannedRun extends Identified {
	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(Integer)
	 * @see daubline.model.ModelPackage#getPlannedRun_Place()
	 * @model
	 * @generated
	 */
	Integer getPlace();

	/**
	 * Sets the value of the '{@link daubline.model.PlannedRun#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(Integer value);

	/**
	 * Returns the value of the '<em><b>Furnace</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Furnace</em>' attribute.
	 * @see #setFurnace(Integer)
	 * @see daubline.model.ModelPackage#getPlannedRun_Furnace()
	 * @model
	 * @generated
	 */
	Integer getFurnace();

	/**
	 * Sets the value of the '{@link daubline.model.PlannedRun#getFurnace <em>Furnace</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Furnace</em>' attribute.
	 * @see #getFurnace()
	 * @generated
	 */
	void setFurnace(Integer value);

	/**
	 * Returns the value of the '<em><b>Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Day</em>' attribute.
	 * @see #setDay(Integer)
	 * @see daubline.model.ModelPackage#getPlannedRun_Day()
	 * @model
	 * @generated
	 */
	Integer getDay();

	/**
	 * Sets the value of the '{@link daubline.model.PlannedRun#getDay <em>Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Day</em>' attribute.
	 * @see #getDay()
	 * @generated
	 */
	void setDay(Integer value);

	/**
	 * Returns the value of the '<em><b>Trial</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Trial</em>' reference.
	 * @see #setTrial(Trial)
	 * @see daubline.model.ModelPackage#getPlannedRun_Trial()
	 * @model
	 * @generated
	 */
	Trial getTrial();

	/**
	 * Sets the value of the '{@link daubline.model.PlannedRun#getTrial <em>Trial</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trial</em>' reference.
	 * @see #getTrial()
	 * @generated
	 */
	void setTrial(Trial value);

	/**
	 * Returns the value of the '<em><b>Settings</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Settings</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getPlannedRun_Settings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reading> getSettings();

	/**
	 * Returns the value of the '<em><b>Deviation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Deviation</em>' attribute.
	 * @see #setDeviation(String)
	 * @see daubline.model.ModelPackage#getPlannedRun_Deviation()
	 * @model
	 * @generated
	 */
	String getDeviation();

	/**
	 * Sets the value of the '{@link daubline.model.PlannedRun#getDeviation <em>Deviation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Deviation</em>' attribute.
	 * @see #getDeviation()
	 * @generated
	 */
	void setDeviation(String value);

} // PlannedRun
