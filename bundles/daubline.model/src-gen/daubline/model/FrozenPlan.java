/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Frozen Plan</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A plan as it was frozen before the first fire; it stays as it is, and what was done otherwise is noted beside it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.FrozenPlan#getAim <em>Aim</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getSeed <em>Seed</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getAlgorithm <em>Algorithm</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getVersion <em>Version</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getFrozenAt <em>Frozen At</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getEngine <em>Engine</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getFurnaceRatio <em>Furnace Ratio</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getDayRatio <em>Day Ratio</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getRestriction <em>Restriction</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getReasons <em>Reasons</em>}</li>
 *   <li>{@link daubline.model.FrozenPlan#getRuns <em>Runs</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getFrozenPlan()
 * @model
 * @generated
 */
public interface FrozenPlan extends Named {
	/**
	 * Returns the value of the '<em><b>Aim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aim</em>' attribute.
	 * @see #setAim(String)
	 * @see daubline.model.ModelPackage#getFrozenPlan_Aim()
	 * @model
	 * @generated
	 */
	String getAim();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getAim <em>Aim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Aim</em>' attribute.
	 * @see #getAim()
	 * @generated
	 */
	void setAim(String value);

	/**
	 * Returns the value of the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Seed</em>' attribute.
	 * @see #setSeed(Long)
	 * @see daubline.model.ModelPackage#getFrozenPlan_Seed()
	 * @model
	 * @generated
	 */
	Long getSeed();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getSeed <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seed</em>' attribute.
	 * @see #getSeed()
	 * @generated
	 */
	void setSeed(Long value);

	/**
	 * Returns the value of the '<em><b>Algorithm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Algorithm</em>' attribute.
	 * @see #setAlgorithm(String)
	 * @see daubline.model.ModelPackage#getFrozenPlan_Algorithm()
	 * @model
	 * @generated
	 */
	String getAlgorithm();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getAlgorithm <em>Algorithm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Algorithm</em>' attribute.
	 * @see #getAlgorithm()
	 * @generated
	 */
	void setAlgorithm(String value);

	/**
	 * Returns the value of the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Version</em>' attribute.
	 * @see #setVersion(String)
	 * @see daubline.model.ModelPackage#getFrozenPlan_Version()
	 * @model
	 * @generated
	 */
	String getVersion();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getVersion <em>Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Version</em>' attribute.
	 * @see #getVersion()
	 * @generated
	 */
	void setVersion(String value);

	/**
	 * Returns the value of the '<em><b>Frozen At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frozen At</em>' attribute.
	 * @see #setFrozenAt(String)
	 * @see daubline.model.ModelPackage#getFrozenPlan_FrozenAt()
	 * @model
	 * @generated
	 */
	String getFrozenAt();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getFrozenAt <em>Frozen At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frozen At</em>' attribute.
	 * @see #getFrozenAt()
	 * @generated
	 */
	void setFrozenAt(String value);

	/**
	 * Returns the value of the '<em><b>Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Engine</em>' attribute.
	 * @see #setEngine(String)
	 * @see daubline.model.ModelPackage#getFrozenPlan_Engine()
	 * @model
	 * @generated
	 */
	String getEngine();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getEngine <em>Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Engine</em>' attribute.
	 * @see #getEngine()
	 * @generated
	 */
	void setEngine(String value);

	/**
	 * Returns the value of the '<em><b>Furnace Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Furnace Ratio</em>' attribute.
	 * @see #setFurnaceRatio(Double)
	 * @see daubline.model.ModelPackage#getFrozenPlan_FurnaceRatio()
	 * @model
	 * @generated
	 */
	Double getFurnaceRatio();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getFurnaceRatio <em>Furnace Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Furnace Ratio</em>' attribute.
	 * @see #getFurnaceRatio()
	 * @generated
	 */
	void setFurnaceRatio(Double value);

	/**
	 * Returns the value of the '<em><b>Day Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Day Ratio</em>' attribute.
	 * @see #setDayRatio(Double)
	 * @see daubline.model.ModelPackage#getFrozenPlan_DayRatio()
	 * @model
	 * @generated
	 */
	Double getDayRatio();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getDayRatio <em>Day Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Day Ratio</em>' attribute.
	 * @see #getDayRatio()
	 * @generated
	 */
	void setDayRatio(Double value);

	/**
	 * Returns the value of the '<em><b>Restriction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Restriction</em>' attribute.
	 * @see #setRestriction(String)
	 * @see daubline.model.ModelPackage#getFrozenPlan_Restriction()
	 * @model
	 * @generated
	 */
	String getRestriction();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getRestriction <em>Restriction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Restriction</em>' attribute.
	 * @see #getRestriction()
	 * @generated
	 */
	void setRestriction(String value);

	/**
	 * Returns the value of the '<em><b>Reasons</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reasons</em>' attribute.
	 * @see #setReasons(String)
	 * @see daubline.model.ModelPackage#getFrozenPlan_Reasons()
	 * @model
	 * @generated
	 */
	String getReasons();

	/**
	 * Sets the value of the '{@link daubline.model.FrozenPlan#getReasons <em>Reasons</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reasons</em>' attribute.
	 * @see #getReasons()
	 * @generated
	 */
	void setReasons(String value);

	/**
	 * Returns the value of the '<em><b>Runs</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.PlannedRun}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Runs</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getFrozenPlan_Runs()
	 * @model containment="true"
	 * @generated
	 */
	EList<PlannedRun> getRuns();

} // FrozenPlan
