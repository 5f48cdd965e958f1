/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Labour</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The hands and days of a series, and how long builds, drying, burns and refits take.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Labour#getTeam <em>Team</em>}</li>
 *   <li>{@link daubline.model.Labour#getFirstDay <em>First Day</em>}</li>
 *   <li>{@link daubline.model.Labour#getLastDay <em>Last Day</em>}</li>
 *   <li>{@link daubline.model.Labour#getWeekdays <em>Weekdays</em>}</li>
 *   <li>{@link daubline.model.Labour#getDaysOff <em>Days Off</em>}</li>
 *   <li>{@link daubline.model.Labour#getBuildDays <em>Build Days</em>}</li>
 *   <li>{@link daubline.model.Labour#getBuildPeople <em>Build People</em>}</li>
 *   <li>{@link daubline.model.Labour#getDryDays <em>Dry Days</em>}</li>
 *   <li>{@link daubline.model.Labour#getBurnDays <em>Burn Days</em>}</li>
 *   <li>{@link daubline.model.Labour#getBurnPeople <em>Burn People</em>}</li>
 *   <li>{@link daubline.model.Labour#getRefitDays <em>Refit Days</em>}</li>
 *   <li>{@link daubline.model.Labour#getRefitPeople <em>Refit People</em>}</li>
 *   <li>{@link daubline.model.Labour#getRefitDryDays <em>Refit Dry Days</em>}</li>
 *   <li>{@link daubline.model.Labour#getFirings <em>Firings</em>}</li>
 *   <li>{@link daubline.model.Labour#getFailureShare <em>Failure Share</em>}</li>
 *   <li>{@link daubline.model.Labour#getAssurance <em>Assurance</em>}</li>
 *   <li>{@link daubline.model.Labour#getPermissions <em>Permissions</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getLabour()
 * @model
 * @generated
 */
public interface Labour extends Identified {
	/**
	 * Returns the value of the '<em><b>Team</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Team</em>' attribute.
	 * @see #setTeam(Integer)
	 * @see daubline.model.ModelPackage#getLabour_Team()
	 * @model
	 * @generated
	 */
	Integer getTeam();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getTeam <em>Team</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Team</em>' attribute.
	 * @see #getTeam()
	 * @generated
	 */
	void setTeam(Integer value);

	/**
	 * Returns the value of the '<em><b>First Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>First Day</em>' attribute.
	 * @see #setFirstDay(String)
	 * @see daubline.model.ModelPackage#getLabour_FirstDay()
	 * @model
	 * @generated
	 */
	String getFirstDay();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getFirstDay <em>First Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First Day</em>' attribute.
	 * @see #getFirstDay()
	 * @generated
	 */
	void setFirstDay(String value);

	/**
	 * Returns the value of the '<em><b>Last Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Last Day</em>' attribute.
	 * @see #setLastDay(String)
	 * @see daubline.model.ModelPackage#getLabour_LastDay()
	 * @model
	 * @generated
	 */
	String getLastDay();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getLastDay <em>Last Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Day</em>' attribute.
	 * @see #getLastDay()
	 * @generated
	 */
	void setLastDay(String value);

	/**
	 * Returns the value of the '<em><b>Weekdays</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Weekdays</em>' attribute.
	 * @see #setWeekdays(String)
	 * @see daubline.model.ModelPackage#getLabour_Weekdays()
	 * @model
	 * @generated
	 */
	String getWeekdays();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getWeekdays <em>Weekdays</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Weekdays</em>' attribute.
	 * @see #getWeekdays()
	 * @generated
	 */
	void setWeekdays(String value);

	/**
	 * Returns the value of the '<em><b>Days Off</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Days Off</em>' attribute.
	 * @see #setDaysOff(String)
	 * @see daubline.model.ModelPackage#getLabour_DaysOff()
	 * @model
	 * @generated
	 */
	String getDaysOff();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getDaysOff <em>Days Off</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Days Off</em>' attribute.
	 * @see #getDaysOff()
	 * @generated
	 */
	void setDaysOff(String value);

	/**
	 * Returns the value of the '<em><b>Build Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Build Days</em>' attribute.
	 * @see #setBuildDays(Integer)
	 * @see daubline.model.ModelPackage#getLabour_BuildDays()
	 * @model
	 * @generated
	 */
	Integer getBuildDays();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getBuildDays <em>Build Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Build Days</em>' attribute.
	 * @see #getBuildDays()
	 * @generated
	 */
	void setBuildDays(Integer value);

	/**
	 * Returns the value of the '<em><b>Build People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Build People</em>' attribute.
	 * @see #setBuildPeople(Integer)
	 * @see daubline.model.ModelPackage#getLabour_BuildPeople()
	 * @model
	 * @generated
	 */
	Integer getBuildPeople();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getBuildPeople <em>Build People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Build People</em>' attribute.
	 * @see #getBuildPeople()
	 * @generated
	 */
	void setBuildPeople(Integer value);

	/**
	 * Returns the value of the '<em><b>Dry Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dry Days</em>' attribute.
	 * @see #setDryDays(Integer)
	 * @see daubline.model.ModelPackage#getLabour_DryDays()
	 * @model
	 * @generated
	 */
	Integer getDryDays();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getDryDays <em>Dry Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dry Days</em>' attribute.
	 * @see #getDryDays()
	 * @generated
	 */
	void setDryDays(Integer value);

	/**
	 * Returns the value of the '<em><b>Burn Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Burn Days</em>' attribute.
	 * @see #setBurnDays(Integer)
	 * @see daubline.model.ModelPackage#getLabour_BurnDays()
	 * @model
	 * @generated
	 */
	Integer getBurnDays();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getBurnDays <em>Burn Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Burn Days</em>' attribute.
	 * @see #getBurnDays()
	 * @generated
	 */
	void setBurnDays(Integer value);

	/**
	 * Returns the value of the '<em><b>Burn People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Burn People</em>' attribute.
	 * @see #setBurnPeople(Integer)
	 * @see daubline.model.ModelPackage#getLabour_BurnPeople()
	 * @model
	 * @generated
	 */
	Integer getBurnPeople();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getBurnPeople <em>Burn People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Burn People</em>' attribute.
	 * @see #getBurnPeople()
	 * @generated
	 */
	void setBurnPeople(Integer value);

	/**
	 * Returns the value of the '<em><b>Refit Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Refit Days</em>' attribute.
	 * @see #setRefitDays(Integer)
	 * @see daubline.model.ModelPackage#getLabour_RefitDays()
	 * @model
	 * @generated
	 */
	Integer getRefitDays();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getRefitDays <em>Refit Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Refit Days</em>' attribute.
	 * @see #getRefitDays()
	 * @generated
	 */
	void setRefitDays(Integer value);

	/**
	 * Returns the value of the '<em><b>Refit People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Refit People</em>' attribute.
	 * @see #setRefitPeople(Integer)
	 * @see daubline.model.ModelPackage#getLabour_RefitPeople()
	 * @model
	 * @generated
	 */
	Integer getRefitPeople();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getRefitPeople <em>Refit People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Refit People</em>' attribute.
	 * @see #getRefitPeople()
	 * @generated
	 */
	void setRefitPeople(Integer value);

	/**
	 * Returns the value of the '<em><b>Refit Dry Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Refit Dry Days</em>' attribute.
	 * @see #setRefitDryDays(Integer)
	 * @see daubline.model.ModelPackage#getLabour_RefitDryDays()
	 * @model
	 * @generated
	 */
	Integer getRefitDryDays();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getRefitDryDays <em>Refit Dry Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Refit Dry Days</em>' attribute.
	 * @see #getRefitDryDays()
	 * @generated
	 */
	void setRefitDryDays(Integer value);

	/**
	 * Returns the value of the '<em><b>Firings</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Firings</em>' attribute.
	 * @see #setFirings(Integer)
	 * @see daubline.model.ModelPackage#getLabour_Firings()
	 * @model
	 * @generated
	 */
	Integer getFirings();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getFirings <em>Firings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Firings</em>' attribute.
	 * @see #getFirings()
	 * @generated
	 */
	void setFirings(Integer value);

	/**
	 * Returns the value of the '<em><b>Failure Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Failure Share</em>' attribute.
	 * @see #setFailureShare(Double)
	 * @see daubline.model.ModelPackage#getLabour_FailureShare()
	 * @model
	 * @generated
	 */
	Double getFailureShare();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getFailureShare <em>Failure Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Failure Share</em>' attribute.
	 * @see #getFailureShare()
	 * @generated
	 */
	void setFailureShare(Double value);

	/**
	 * Returns the value of the '<em><b>Assurance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Assurance</em>' attribute.
	 * @see #setAssurance(Double)
	 * @see daubline.model.ModelPackage#getLabour_Assurance()
	 * @model
	 * @generated
	 */
	Double getAssurance();

	/**
	 * Sets the value of the '{@link daubline.model.Labour#getAssurance <em>Assurance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Assurance</em>' attribute.
	 * @see #getAssurance()
	 * @generated
	 */
	void setAssurance(Double value);

	/**
	 * Returns the value of the '<em><b>Permissions</b></em>' reference list.
	 * The list contents are of type {@link daubline.model.Permission}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Permissions</em>' reference list.
	 * @see daubline.model.ModelPackage#getLabour_Permissions()
	 * @model
	 * @generated
	 */
	EList<Permission> getPermissions();

} // Labour
