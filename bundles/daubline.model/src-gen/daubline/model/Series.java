/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Series</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A set of trials with one question.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Series#getQuestion <em>Question</em>}</li>
 *   <li>{@link daubline.model.Series#getPlan <em>Plan</em>}</li>
 *   <li>{@link daubline.model.Series#getBudget <em>Budget</em>}</li>
 *   <li>{@link daubline.model.Series#isFrozen <em>Frozen</em>}</li>
 *   <li>{@link daubline.model.Series#getSeed <em>Seed</em>}</li>
 *   <li>{@link daubline.model.Series#getStopCriteria <em>Stop Criteria</em>}</li>
 *   <li>{@link daubline.model.Series#getFactors <em>Factors</em>}</li>
 *   <li>{@link daubline.model.Series#getRoles <em>Roles</em>}</li>
 *   <li>{@link daubline.model.Series#getTrials <em>Trials</em>}</li>
 *   <li>{@link daubline.model.Series#getAim <em>Aim</em>}</li>
 *   <li>{@link daubline.model.Series#getForbidden <em>Forbidden</em>}</li>
 *   <li>{@link daubline.model.Series#getProvisions <em>Provisions</em>}</li>
 *   <li>{@link daubline.model.Series#getLabour <em>Labour</em>}</li>
 *   <li>{@link daubline.model.Series#getPlans <em>Plans</em>}</li>
 *   <li>{@link daubline.model.Series#getMostTrials <em>Most Trials</em>}</li>
 *   <li>{@link daubline.model.Series#getCentreTrials <em>Centre Trials</em>}</li>
 *   <li>{@link daubline.model.Series#getRepeatTrials <em>Repeat Trials</em>}</li>
 *   <li>{@link daubline.model.Series#getBurnsPerDay <em>Burns Per Day</em>}</li>
 *   <li>{@link daubline.model.Series#getFurnaceRatio <em>Furnace Ratio</em>}</li>
 *   <li>{@link daubline.model.Series#getDayRatio <em>Day Ratio</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getSeries()
 * @model
 * @generated
 */
public interface Series extends Named {
	/**
	 * Returns the value of the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Question</em>' attribute.
	 * @see #setQuestion(String)
	 * @see daubline.model.ModelPackage#getSeries_Question()
	 * @model
	 * @generated
	 */
	String getQuestion();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getQuestion <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Question</em>' attribute.
	 * @see #getQuestion()
	 * @generated
	 */
	void setQuestion(String value);

	/**
	 * Returns the value of the '<em><b>Plan</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Plan</em>' attribute.
	 * @see #setPlan(String)
	 * @see daubline.model.ModelPackage#getSeries_Plan()
	 * @model
	 * @generated
	 */
	String getPlan();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getPlan <em>Plan</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plan</em>' attribute.
	 * @see #getPlan()
	 * @generated
	 */
	void setPlan(String value);

	/**
	 * Returns the value of the '<em><b>Budget</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Budget</em>' attribute.
	 * @see #setBudget(String)
	 * @see daubline.model.ModelPackage#getSeries_Budget()
	 * @model
	 * @generated
	 */
	String getBudget();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getBudget <em>Budget</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Budget</em>' attribute.
	 * @see #getBudget()
	 * @generated
	 */
	void setBudget(String value);

	/**
	 * Returns the value of the '<em><b>Frozen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frozen</em>' attribute.
	 * @see #setFrozen(boolean)
	 * @see daubline.model.ModelPackage#getSeries_Frozen()
	 * @model
	 * @generated
	 */
	boolean isFrozen();

	/**
	 * Sets the value of the '{@link daubline.model.Series#isFrozen <em>Frozen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frozen</em>' attribute.
	 * @see #isFrozen()
	 * @generated
	 */
	void setFrozen(boolean value);

	/**
	 * Returns the value of the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Seed</em>' attribute.
	 * @see #setSeed(Long)
	 * @see daubline.model.ModelPackage#getSeries_Seed()
	 * @model
	 * @generated
	 */
	Long getSeed();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getSeed <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seed</em>' attribute.
	 * @see #getSeed()
	 * @generated
	 */
	void setSeed(Long value);

	/**
	 * Returns the value of the '<em><b>Stop Criteria</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stop Criteria</em>' attribute.
	 * @see #setStopCriteria(String)
	 * @see daubline.model.ModelPackage#getSeries_StopCriteria()
	 * @model
	 * @generated
	 */
	String getStopCriteria();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getStopCriteria <em>Stop Criteria</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stop Criteria</em>' attribute.
	 * @see #getStopCriteria()
	 * @generated
	 */
	void setStopCriteria(String value);

	/**
	 * Returns the value of the '<em><b>Factors</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Factor}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Factors</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSeries_Factors()
	 * @model containment="true"
	 * @generated
	 */
	EList<Factor> getFactors();

	/**
	 * Returns the value of the '<em><b>Roles</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.RoleAssignment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Roles</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSeries_Roles()
	 * @model containment="true"
	 * @generated
	 */
	EList<RoleAssignment> getRoles();

	/**
	 * Returns the value of the '<em><b>Trials</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Trial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Trials</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSeries_Trials()
	 * @model containment="true"
	 * @generated
	 */
	EList<Trial> getTrials();

	/**
	 * Returns the value of the '<em><b>Aim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Aim</em>' attribute.
	 * @see #setAim(String)
	 * @see daubline.model.ModelPackage#getSeries_Aim()
	 * @model
	 * @generated
	 */
	String getAim();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getAim <em>Aim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Aim</em>' attribute.
	 * @see #getAim()
	 * @generated
	 */
	void setAim(String value);

	/**
	 * Returns the value of the '<em><b>Forbidden</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.ForbiddenCombination}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Forbidden</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSeries_Forbidden()
	 * @model containment="true"
	 * @generated
	 */
	EList<ForbiddenCombination> getForbidden();

	/**
	 * Returns the value of the '<em><b>Provisions</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Provision}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Provisions</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSeries_Provisions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Provision> getProvisions();

	/**
	 * Returns the value of the '<em><b>Labour</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Labour</em>' containment reference.
	 * @see #setLabour(Labour)
	 * @see daubline.model.ModelPackage#getSeries_Labour()
	 * @model containment="true"
	 * @generated
	 */
	Labour getLabour();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getLabour <em>Labour</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Labour</em>' containment reference.
	 * @see #getLabour()
	 * @generated
	 */
	void setLabour(Labour value);

	/**
	 * Returns the value of the '<em><b>Plans</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.FrozenPlan}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Plans</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSeries_Plans()
	 * @model containment="true"
	 * @generated
	 */
	EList<FrozenPlan> getPlans();

	/**
	 * Returns the value of the '<em><b>Most Trials</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Most Trials</em>' attribute.
	 * @see #setMostTrials(Integer)
	 * @see daubline.model.ModelPackage#getSeries_MostTrials()
	 * @model
	 * @generated
	 */
	Integer getMostTrials();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getMostTrials <em>Most Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Most Trials</em>' attribute.
	 * @see #getMostTrials()
	 * @generated
	 */
	void setMostTrials(Integer value);

	/**
	 * Returns the value of the '<em><b>Centre Trials</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Centre Trials</em>' attribute.
	 * @see #setCentreTrials(Integer)
	 * @see daubline.model.ModelPackage#getSeries_CentreTrials()
	 * @model
	 * @generated
	 */
	Integer getCentreTrials();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getCentreTrials <em>Centre Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Centre Trials</em>' attribute.
	 * @see #getCentreTrials()
	 * @generated
	 */
	void setCentreTrials(Integer value);

	/**
	 * Returns the value of the '<em><b>Repeat Trials</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Repeat Trials</em>' attribute.
	 * @see #setRepeatTrials(Integer)
	 * @see daubline.model.ModelPackage#getSeries_RepeatTrials()
	 * @model
	 * @generated
	 */
	Integer getRepeatTrials();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getRepeatTrials <em>Repeat Trials</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Repeat Trials</em>' attribute.
	 * @see #getRepeatTrials()
	 * @generated
	 */
	void setRepeatTrials(Integer value);

	/**
	 * Returns the value of the '<em><b>Burns Per Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Burns Per Day</em>' attribute.
	 * @see #setBurnsPerDay(Integer)
	 * @see daubline.model.ModelPackage#getSeries_BurnsPerDay()
	 * @model
	 * @generated
	 */
	Integer getBurnsPerDay();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getBurnsPerDay <em>Burns Per Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Burns Per Day</em>' attribute.
	 * @see #getBurnsPerDay()
	 * @generated
	 */
	void setBurnsPerDay(Integer value);

	/**
	 * Returns the value of the '<em><b>Furnace Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Furnace Ratio</em>' attribute.
	 * @see #setFurnaceRatio(Double)
	 * @see daubline.model.ModelPackage#getSeries_FurnaceRatio()
	 * @model
	 * @generated
	 */
	Double getFurnaceRatio();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getFurnaceRatio <em>Furnace Ratio</em>}' attribute.
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
	 * @see daubline.model.ModelPackage#getSeries_DayRatio()
	 * @model
	 * @generated
	 */
	Double getDayRatio();

	/**
	 * Sets the value of the '{@link daubline.model.Series#getDayRatio <em>Day Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Day Ratio</em>' attribute.
	 * @see #getDayRatio()
	 * @generated
	 */
	void setDayRatio(Double value);

} // Series
