/**
 */
package daubline.model;

import daubline.base.TrialKind;
import daubline.base.TrialStatus;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Trial</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One trial: build, fire, remains.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Trial#getNumber <em>Number</em>}</li>
 *   <li>{@link daubline.model.Trial#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.Trial#getStatus <em>Status</em>}</li>
 *   <li>{@link daubline.model.Trial#getOn <em>On</em>}</li>
 *   <li>{@link daubline.model.Trial#getBuild <em>Build</em>}</li>
 *   <li>{@link daubline.model.Trial#getReconstruction <em>Reconstruction</em>}</li>
 *   <li>{@link daubline.model.Trial#getRepeatOf <em>Repeat Of</em>}</li>
 *   <li>{@link daubline.model.Trial#getLeader <em>Leader</em>}</li>
 *   <li>{@link daubline.model.Trial#getPeople <em>People</em>}</li>
 *   <li>{@link daubline.model.Trial#getLots <em>Lots</em>}</li>
 *   <li>{@link daubline.model.Trial#isExcluded <em>Excluded</em>}</li>
 *   <li>{@link daubline.model.Trial#getExcludedBecause <em>Excluded Because</em>}</li>
 *   <li>{@link daubline.model.Trial#getConclusion <em>Conclusion</em>}</li>
 *   <li>{@link daubline.model.Trial#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.Trial#getPredictions <em>Predictions</em>}</li>
 *   <li>{@link daubline.model.Trial#getLog <em>Log</em>}</li>
 *   <li>{@link daubline.model.Trial#getLoggers <em>Loggers</em>}</li>
 *   <li>{@link daubline.model.Trial#getPieces <em>Pieces</em>}</li>
 *   <li>{@link daubline.model.Trial#getRemains <em>Remains</em>}</li>
 *   <li>{@link daubline.model.Trial#getSamples <em>Samples</em>}</li>
 *   <li>{@link daubline.model.Trial#getAnalyses <em>Analyses</em>}</li>
 *   <li>{@link daubline.model.Trial#getFiles <em>Files</em>}</li>
 *   <li>{@link daubline.model.Trial#getVisits <em>Visits</em>}</li>
 *   <li>{@link daubline.model.Trial#getReadyBecause <em>Ready Because</em>}</li>
 *   <li>{@link daubline.model.Trial#getMeasures <em>Measures</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getTrial()
 * @model
 * @generated
 */
public interface Trial extends Named {
	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(Integer)
	 * @see daubline.model.ModelPackage#getTrial_Number()
	 * @model
	 * @generated
	 */
	Integer getNumber();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(Integer value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(TrialKind)
	 * @see daubline.model.ModelPackage#getTrial_Kind()
	 * @model dataType="daubline.model.TrialKind"
	 * @generated
	 */
	TrialKind getKind();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(TrialKind value);

	/**
	 * Returns the value of the '<em><b>Status</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Status</em>' attribute.
	 * @see #setStatus(TrialStatus)
	 * @see daubline.model.ModelPackage#getTrial_Status()
	 * @model dataType="daubline.model.TrialStatus"
	 * @generated
	 */
	TrialStatus getStatus();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getStatus <em>Status</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Status</em>' attribute.
	 * @see #getStatus()
	 * @generated
	 */
	void setStatus(TrialStatus value);

	/**
	 * Returns the value of the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>On</em>' attribute.
	 * @see #setOn(String)
	 * @see daubline.model.ModelPackage#getTrial_On()
	 * @model
	 * @generated
	 */
	String getOn();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getOn <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On</em>' attribute.
	 * @see #getOn()
	 * @generated
	 */
	void setOn(String value);

	/**
	 * Returns the value of the '<em><b>Build</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Build</em>' reference.
	 * @see #setBuild(FurnaceBuild)
	 * @see daubline.model.ModelPackage#getTrial_Build()
	 * @model
	 * @generated
	 */
	FurnaceBuild getBuild();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getBuild <em>Build</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Build</em>' reference.
	 * @see #getBuild()
	 * @generated
	 */
	void setBuild(FurnaceBuild value);

	/**
	 * Returns the value of the '<em><b>Reconstruction</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reconstruction</em>' reference.
	 * @see #setReconstruction(Reconstruction)
	 * @see daubline.model.ModelPackage#getTrial_Reconstruction()
	 * @model
	 * @generated
	 */
	Reconstruction getReconstruction();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getReconstruction <em>Reconstruction</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reconstruction</em>' reference.
	 * @see #getReconstruction()
	 * @generated
	 */
	void setReconstruction(Reconstruction value);

	/**
	 * Returns the value of the '<em><b>Repeat Of</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Repeat Of</em>' reference.
	 * @see #setRepeatOf(Trial)
	 * @see daubline.model.ModelPackage#getTrial_RepeatOf()
	 * @model
	 * @generated
	 */
	Trial getRepeatOf();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getRepeatOf <em>Repeat Of</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Repeat Of</em>' reference.
	 * @see #getRepeatOf()
	 * @generated
	 */
	void setRepeatOf(Trial value);

	/**
	 * Returns the value of the '<em><b>Leader</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Leader</em>' reference.
	 * @see #setLeader(Person)
	 * @see daubline.model.ModelPackage#getTrial_Leader()
	 * @model
	 * @generated
	 */
	Person getLeader();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getLeader <em>Leader</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leader</em>' reference.
	 * @see #getLeader()
	 * @generated
	 */
	void setLeader(Person value);

	/**
	 * Returns the value of the '<em><b>People</b></em>' reference list.
	 * The list contents are of type {@link daubline.model.Person}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>People</em>' reference list.
	 * @see daubline.model.ModelPackage#getTrial_People()
	 * @model
	 * @generated
	 */
	EList<Person> getPeople();

	/**
	 * Returns the value of the '<em><b>Lots</b></em>' reference list.
	 * The list contents are of type {@link daubline.model.Lot}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lots</em>' reference list.
	 * @see daubline.model.ModelPackage#getTrial_Lots()
	 * @model
	 * @generated
	 */
	EList<Lot> getLots();

	/**
	 * Returns the value of the '<em><b>Excluded</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Excluded</em>' attribute.
	 * @see #setExcluded(boolean)
	 * @see daubline.model.ModelPackage#getTrial_Excluded()
	 * @model
	 * @generated
	 */
	boolean isExcluded();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#isExcluded <em>Excluded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Excluded</em>' attribute.
	 * @see #isExcluded()
	 * @generated
	 */
	void setExcluded(boolean value);

	/**
	 * Returns the value of the '<em><b>Excluded Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Excluded Because</em>' attribute.
	 * @see #setExcludedBecause(String)
	 * @see daubline.model.ModelPackage#getTrial_ExcludedBecause()
	 * @model
	 * @generated
	 */
	String getExcludedBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getExcludedBecause <em>Excluded Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Excluded Because</em>' attribute.
	 * @see #getExcludedBecause()
	 * @generated
	 */
	void setExcludedBecause(String value);

	/**
	 * Returns the value of the '<em><b>Conclusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Conclusion</em>' attribute.
	 * @see #setConclusion(String)
	 * @see daubline.model.ModelPackage#getTrial_Conclusion()
	 * @model
	 * @generated
	 */
	String getConclusion();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getConclusion <em>Conclusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conclusion</em>' attribute.
	 * @see #getConclusion()
	 * @generated
	 */
	void setConclusion(String value);

	/**
	 * Returns the value of the '<em><b>Values</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.StagedValue}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Values</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Values()
	 * @model containment="true"
	 * @generated
	 */
	EList<StagedValue> getValues();

	/**
	 * Returns the value of the '<em><b>Predictions</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Prediction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Predictions</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Predictions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Prediction> getPredictions();

	/**
	 * Returns the value of the '<em><b>Log</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.LogEntry}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Log</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Log()
	 * @model containment="true"
	 * @generated
	 */
	EList<LogEntry> getLog();

	/**
	 * Returns the value of the '<em><b>Loggers</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.LoggerFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Loggers</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Loggers()
	 * @model containment="true"
	 * @generated
	 */
	EList<LoggerFile> getLoggers();

	/**
	 * Returns the value of the '<em><b>Pieces</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Piece}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pieces</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Pieces()
	 * @model containment="true"
	 * @generated
	 */
	EList<Piece> getPieces();

	/**
	 * Returns the value of the '<em><b>Remains</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Remains</em>' containment reference.
	 * @see #setRemains(RemainsSheet)
	 * @see daubline.model.ModelPackage#getTrial_Remains()
	 * @model containment="true"
	 * @generated
	 */
	RemainsSheet getRemains();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getRemains <em>Remains</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remains</em>' containment reference.
	 * @see #getRemains()
	 * @generated
	 */
	void setRemains(RemainsSheet value);

	/**
	 * Returns the value of the '<em><b>Samples</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Sample}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Samples</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Samples()
	 * @model containment="true"
	 * @generated
	 */
	EList<Sample> getSamples();

	/**
	 * Returns the value of the '<em><b>Analyses</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Analysis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Analyses</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Analyses()
	 * @model containment="true"
	 * @generated
	 */
	EList<Analysis> getAnalyses();

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.DataFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<DataFile> getFiles();

	/**
	 * Returns the value of the '<em><b>Visits</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Visit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Visits</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Visits()
	 * @model containment="true"
	 * @generated
	 */
	EList<Visit> getVisits();

	/**
	 * Returns the value of the '<em><b>Ready Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Ready Because</em>' attribute.
	 * @see #setReadyBecause(String)
	 * @see daubline.model.ModelPackage#getTrial_ReadyBecause()
	 * @model
	 * @generated
	 */
	String getReadyBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Trial#getReadyBecause <em>Ready Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ready Because</em>' attribute.
	 * @see #getReadyBecause()
	 * @generated
	 */
	void setReadyBecause(String value);

	/**
	 * Returns the value of the '<em><b>Measures</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Measure}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measures</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getTrial_Measures()
	 * @model containment="true"
	 * @generated
	 */
	EList<Measure> getMeasures();

} // Trial
