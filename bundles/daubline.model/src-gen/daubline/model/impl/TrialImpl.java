/**
 */
package daubline.model.impl;

import daubline.base.TrialKind;
import daubline.base.TrialStatus;

import daubline.model.Analysis;
import daubline.model.DataFile;
import daubline.model.FurnaceBuild;
import daubline.model.LogEntry;
import daubline.model.LoggerFile;
import daubline.model.Lot;
import daubline.model.Measure;
import daubline.model.ModelPackage;
import daubline.model.Person;
import daubline.model.Piece;
import daubline.model.Prediction;
import daubline.model.Reconstruction;
import daubline.model.RemainsSheet;
import daubline.model.Sample;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.model.Visit;

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
 * An implementation of the model object '<em><b>Trial</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.TrialImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getStatus <em>Status</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getOn <em>On</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getBuild <em>Build</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getReconstruction <em>Reconstruction</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getRepeatOf <em>Repeat Of</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getLeader <em>Leader</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getPeople <em>People</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getLots <em>Lots</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#isExcluded <em>Excluded</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getExcludedBecause <em>Excluded Because</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getConclusion <em>Conclusion</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getPredictions <em>Predictions</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getLog <em>Log</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getLoggers <em>Loggers</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getPieces <em>Pieces</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getRemains <em>Remains</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getSamples <em>Samples</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getAnalyses <em>Analyses</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getFiles <em>Files</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getVisits <em>Visits</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getReadyBecause <em>Ready Because</em>}</li>
 *   <li>{@link daubline.model.impl.TrialImpl#getMeasures <em>Measures</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TrialImpl extends NamedImpl implements Trial {
	/**
	 * The default value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected static final Integer NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected Integer number = NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final TrialKind KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected TrialKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getStatus() <em>Status</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStatus()
	 * @generated
	 * @ordered
	 */
	protected static final TrialStatus STATUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStatus() <em>Status</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStatus()
	 * @generated
	 * @ordered
	 */
	protected TrialStatus status = STATUS_EDEFAULT;

	/**
	 * The default value of the '{@link #getOn() <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOn()
	 * @generated
	 * @ordered
	 */
	protected static final String ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOn() <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOn()
	 * @generated
	 * @ordered
	 */
	protected String on = ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBuild() <em>Build</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuild()
	 * @generated
	 * @ordered
	 */
	protected FurnaceBuild build;

	/**
	 * The cached value of the '{@link #getReconstruction() <em>Reconstruction</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReconstruction()
	 * @generated
	 * @ordered
	 */
	protected Reconstruction reconstruction;

	/**
	 * The cached value of the '{@link #getRepeatOf() <em>Repeat Of</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRepeatOf()
	 * @generated
	 * @ordered
	 */
	protected Trial repeatOf;

	/**
	 * The cached value of the '{@link #getLeader() <em>Leader</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeader()
	 * @generated
	 * @ordered
	 */
	protected Person leader;

	/**
	 * The cached value of the '{@link #getPeople() <em>People</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPeople()
	 * @generated
	 * @ordered
	 */
	protected EList<Person> people;

	/**
	 * The cached value of the '{@link #getLots() <em>Lots</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLots()
	 * @generated
	 * @ordered
	 */
	protected EList<Lot> lots;

	/**
	 * The default value of the '{@link #isExcluded() <em>Excluded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isExcluded()
	 * @generated
	 * @ordered
	 */
	protected static final boolean EXCLUDED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isExcluded() <em>Excluded</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isExcluded()
	 * @generated
	 * @ordered
	 */
	protected boolean excluded = EXCLUDED_EDEFAULT;

	/**
	 * The default value of the '{@link #getExcludedBecause() <em>Excluded Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExcludedBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String EXCLUDED_BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExcludedBecause() <em>Excluded Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExcludedBecause()
	 * @generated
	 * @ordered
	 */
	protected String excludedBecause = EXCLUDED_BECAUSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getConclusion() <em>Conclusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConclusion()
	 * @generated
	 * @ordered
	 */
	protected static final String CONCLUSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConclusion() <em>Conclusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConclusion()
	 * @generated
	 * @ordered
	 */
	protected String conclusion = CONCLUSION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getValues() <em>Values</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValues()
	 * @generated
	 * @ordered
	 */
	protected EList<StagedValue> values;

	/**
	 * The cached value of the '{@link #getPredictions() <em>Predictions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPredictions()
	 * @generated
	 * @ordered
	 */
	protected EList<Prediction> predictions;

	/**
	 * The cached value of the '{@link #getLog() <em>Log</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLog()
	 * @generated
	 * @ordered
	 */
	protected EList<LogEntry> log;

	/**
	 * The cached value of the '{@link #getLoggers() <em>Loggers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoggers()
	 * @generated
	 * @ordered
	 */
	protected EList<LoggerFile> loggers;

	/**
	 * The cached value of the '{@link #getPieces() <em>Pieces</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieces()
	 * @generated
	 * @ordered
	 */
	protected EList<Piece> pieces;

	/**
	 * The cached value of the '{@link #getRemains() <em>Remains</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemains()
	 * @generated
	 * @ordered
	 */
	protected RemainsSheet remains;

	/**
	 * The cached value of the '{@link #getSamples() <em>Samples</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamples()
	 * @generated
	 * @ordered
	 */
	protected EList<Sample> samples;

	/**
	 * The cached value of the '{@link #getAnalyses() <em>Analyses</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnalyses()
	 * @generated
	 * @ordered
	 */
	protected EList<Analysis> analyses;

	/**
	 * The cached value of the '{@link #getFiles() <em>Files</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiles()
	 * @generated
	 * @ordered
	 */
	protected EList<DataFile> files;

	/**
	 * The cached value of the '{@link #getVisits() <em>Visits</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVisits()
	 * @generated
	 * @ordered
	 */
	protected EList<Visit> visits;

	/**
	 * The default value of the '{@link #getReadyBecause() <em>Ready Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReadyBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String READY_BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReadyBecause() <em>Ready Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReadyBecause()
	 * @generated
	 * @ordered
	 */
	protected String readyBecause = READY_BECAUSE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMeasures() <em>Measures</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasures()
	 * @generated
	 * @ordered
	 */
	protected EList<Measure> measures;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TrialImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.TRIAL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getNumber() {
		return number;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNumber(Integer newNumber) {
		Integer oldNumber = number;
		number = newNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__NUMBER, oldNumber, number));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TrialKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(TrialKind newKind) {
		TrialKind oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TrialStatus getStatus() {
		return status;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStatus(TrialStatus newStatus) {
		TrialStatus oldStatus = status;
		status = newStatus;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__STATUS, oldStatus, status));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOn() {
		return on;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOn(String newOn) {
		String oldOn = on;
		on = newOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__ON, oldOn, on));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FurnaceBuild getBuild() {
		if (build != null && build.eIsProxy()) {
			InternalEObject oldBuild = (InternalEObject)build;
			build = (FurnaceBuild)eResolveProxy(oldBuild);
			if (build != oldBuild) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.TRIAL__BUILD, oldBuild, build));
			}
		}
		return build;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FurnaceBuild basicGetBuild() {
		return build;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBuild(FurnaceBuild newBuild) {
		FurnaceBuild oldBuild = build;
		build = newBuild;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__BUILD, oldBuild, build));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reconstruction getReconstruction() {
		if (reconstruction != null && reconstruction.eIsProxy()) {
			InternalEObject oldReconstruction = (InternalEObject)reconstruction;
			reconstruction = (Reconstruction)eResolveProxy(oldReconstruction);
			if (reconstruction != oldReconstruction) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.TRIAL__RECONSTRUCTION, oldReconstruction, reconstruction));
			}
		}
		return reconstruction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Reconstruction basicGetReconstruction() {
		return reconstruction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReconstruction(Reconstruction newReconstruction) {
		Reconstruction oldReconstruction = reconstruction;
		reconstruction = newReconstruction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__RECONSTRUCTION, oldReconstruction, reconstruction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial getRepeatOf() {
		if (repeatOf != null && repeatOf.eIsProxy()) {
			InternalEObject oldRepeatOf = (InternalEObject)repeatOf;
			repeatOf = (Trial)eResolveProxy(oldRepeatOf);
			if (repeatOf != oldRepeatOf) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.TRIAL__REPEAT_OF, oldRepeatOf, repeatOf));
			}
		}
		return repeatOf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Trial basicGetRepeatOf() {
		return repeatOf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRepeatOf(Trial newRepeatOf) {
		Trial oldRepeatOf = repeatOf;
		repeatOf = newRepeatOf;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__REPEAT_OF, oldRepeatOf, repeatOf));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Person getLeader() {
		if (leader != null && leader.eIsProxy()) {
			InternalEObject oldLeader = (InternalEObject)leader;
			leader = (Person)eResolveProxy(oldLeader);
			if (leader != oldLeader) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.TRIAL__LEADER, oldLeader, leader));
			}
		}
		return leader;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Person basicGetLeader() {
		return leader;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeader(Person newLeader) {
		Person oldLeader = leader;
		leader = newLeader;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__LEADER, oldLeader, leader));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Person> getPeople() {
		if (people == null) {
			people = new EObjectResolvingEList<Person>(Person.class, this, ModelPackage.TRIAL__PEOPLE);
		}
		return people;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Lot> getLots() {
		if (lots == null) {
			lots = new EObjectResolvingEList<Lot>(Lot.class, this, ModelPackage.TRIAL__LOTS);
		}
		return lots;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isExcluded() {
		return excluded;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExcluded(boolean newExcluded) {
		boolean oldExcluded = excluded;
		excluded = newExcluded;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__EXCLUDED, oldExcluded, excluded));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getExcludedBecause() {
		return excludedBecause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExcludedBecause(String newExcludedBecause) {
		String oldExcludedBecause = excludedBecause;
		excludedBecause = newExcludedBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__EXCLUDED_BECAUSE, oldExcludedBecause, excludedBecause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getConclusion() {
		return conclusion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConclusion(String newConclusion) {
		String oldConclusion = conclusion;
		conclusion = newConclusion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__CONCLUSION, oldConclusion, conclusion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StagedValue> getValues() {
		if (values == null) {
			values = new EObjectContainmentEList<StagedValue>(StagedValue.class, this, ModelPackage.TRIAL__VALUES);
		}
		return values;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Prediction> getPredictions() {
		if (predictions == null) {
			predictions = new EObjectContainmentEList<Prediction>(Prediction.class, this, ModelPackage.TRIAL__PREDICTIONS);
		}
		return predictions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LogEntry> getLog() {
		if (log == null) {
			log = new EObjectContainmentEList<LogEntry>(LogEntry.class, this, ModelPackage.TRIAL__LOG);
		}
		return log;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LoggerFile> getLoggers() {
		if (loggers == null) {
			loggers = new EObjectContainmentEList<LoggerFile>(LoggerFile.class, this, ModelPackage.TRIAL__LOGGERS);
		}
		return loggers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Piece> getPieces() {
		if (pieces == null) {
			pieces = new EObjectContainmentEList<Piece>(Piece.class, this, ModelPackage.TRIAL__PIECES);
		}
		return pieces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RemainsSheet getRemains() {
		return remains;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetRemains(RemainsSheet newRemains, NotificationChain msgs) {
		RemainsSheet oldRemains = remains;
		remains = newRemains;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__REMAINS, oldRemains, newRemains);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemains(RemainsSheet newRemains) {
		if (newRemains != remains) {
			NotificationChain msgs = null;
			if (remains != null)
				msgs = ((InternalEObject)remains).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.TRIAL__REMAINS, null, msgs);
			if (newRemains != null)
				msgs = ((InternalEObject)newRemains).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.TRIAL__REMAINS, null, msgs);
			msgs = basicSetRemains(newRemains, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__REMAINS, newRemains, newRemains));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Sample> getSamples() {
		if (samples == null) {
			samples = new EObjectContainmentEList<Sample>(Sample.class, this, ModelPackage.TRIAL__SAMPLES);
		}
		return samples;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Analysis> getAnalyses() {
		if (analyses == null) {
			analyses = new EObjectContainmentEList<Analysis>(Analysis.class, this, ModelPackage.TRIAL__ANALYSES);
		}
		return analyses;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DataFile> getFiles() {
		if (files == null) {
			files = new EObjectContainmentEList<DataFile>(DataFile.class, this, ModelPackage.TRIAL__FILES);
		}
		return files;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Visit> getVisits() {
		if (visits == null) {
			visits = new EObjectContainmentEList<Visit>(Visit.class, this, ModelPackage.TRIAL__VISITS);
		}
		return visits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReadyBecause() {
		return readyBecause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReadyBecause(String newReadyBecause) {
		String oldReadyBecause = readyBecause;
		readyBecause = newReadyBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.TRIAL__READY_BECAUSE, oldReadyBecause, readyBecause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Measure> getMeasures() {
		if (measures == null) {
			measures = new EObjectContainmentEList<Measure>(Measure.class, this, ModelPackage.TRIAL__MEASURES);
		}
		return measures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.TRIAL__VALUES:
				return ((InternalEList<?>)getValues()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__PREDICTIONS:
				return ((InternalEList<?>)getPredictions()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__LOG:
				return ((InternalEList<?>)getLog()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__LOGGERS:
				return ((InternalEList<?>)getLoggers()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__PIECES:
				return ((InternalEList<?>)getPieces()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__REMAINS:
				return basicSetRemains(null, msgs);
			case ModelPackage.TRIAL__SAMPLES:
				return ((InternalEList<?>)getSamples()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__ANALYSES:
				return ((InternalEList<?>)getAnalyses()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__FILES:
				return ((InternalEList<?>)getFiles()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__VISITS:
				return ((InternalEList<?>)getVisits()).basicRemove(otherEnd, msgs);
			case ModelPackage.TRIAL__MEASURES:
				return ((InternalEList<?>)getMeasures()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.TRIAL__NUMBER:
				return getNumber();
			case ModelPackage.TRIAL__KIND:
				return getKind();
			case ModelPackage.TRIAL__STATUS:
				return getStatus();
			case ModelPackage.TRIAL__ON:
				return getOn();
			case ModelPackage.TRIAL__BUILD:
				if (resolve) return getBuild();
				return basicGetBuild();
			case ModelPackage.TRIAL__RECONSTRUCTION:
				if (resolve) return getReconstruction();
				return basicGetReconstruction();
			case ModelPackage.TRIAL__REPEAT_OF:
				if (resolve) return getRepeatOf();
				return basicGetRepeatOf();
			case ModelPackage.TRIAL__LEADER:
				if (resolve) return getLeader();
				return basicGetLeader();
			case ModelPackage.TRIAL__PEOPLE:
				return getPeople();
			case ModelPackage.TRIAL__LOTS:
				return getLots();
			case ModelPackage.TRIAL__EXCLUDED:
				return isExcluded();
			case ModelPackage.TRIAL__EXCLUDED_BECAUSE:
				return getExcludedBecause();
			case ModelPackage.TRIAL__CONCLUSION:
				return getConclusion();
			case ModelPackage.TRIAL__VALUES:
				return getValues();
			case ModelPackage.TRIAL__PREDICTIONS:
				return getPredictions();
			case ModelPackage.TRIAL__LOG:
				return getLog();
			case ModelPackage.TRIAL__LOGGERS:
				return getLoggers();
			case ModelPackage.TRIAL__PIECES:
				return getPieces();
			case ModelPackage.TRIAL__REMAINS:
				return getRemains();
			case ModelPackage.TRIAL__SAMPLES:
				return getSamples();
			case ModelPackage.TRIAL__ANALYSES:
				return getAnalyses();
			case ModelPackage.TRIAL__FILES:
				return getFiles();
			case ModelPackage.TRIAL__VISITS:
				return getVisits();
			case ModelPackage.TRIAL__READY_BECAUSE:
				return getReadyBecause();
			case ModelPackage.TRIAL__MEASURES:
				return getMeasures();
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
			case ModelPackage.TRIAL__NUMBER:
				setNumber((Integer)newValue);
				return;
			case ModelPackage.TRIAL__KIND:
				setKind((TrialKind)newValue);
				return;
			case ModelPackage.TRIAL__STATUS:
				setStatus((TrialStatus)newValue);
				return;
			case ModelPackage.TRIAL__ON:
				setOn((String)newValue);
				return;
			case ModelPackage.TRIAL__BUILD:
				setBuild((FurnaceBuild)newValue);
				return;
			case ModelPackage.TRIAL__RECONSTRUCTION:
				setReconstruction((Reconstruction)newValue);
				return;
			case ModelPackage.TRIAL__REPEAT_OF:
				setRepeatOf((Trial)newValue);
				return;
			case ModelPackage.TRIAL__LEADER:
				setLeader((Person)newValue);
				return;
			case ModelPackage.TRIAL__PEOPLE:
				getPeople().clear();
				getPeople().addAll((Collection<? extends Person>)newValue);
				return;
			case ModelPackage.TRIAL__LOTS:
				getLots().clear();
				getLots().addAll((Collection<? extends Lot>)newValue);
				return;
			case ModelPackage.TRIAL__EXCLUDED:
				setExcluded((Boolean)newValue);
				return;
			case ModelPackage.TRIAL__EXCLUDED_BECAUSE:
				setExcludedBecause((String)newValue);
				return;
			case ModelPackage.TRIAL__CONCLUSION:
				setConclusion((String)newValue);
				return;
			case ModelPackage.TRIAL__VALUES:
				getValues().clear();
				getValues().addAll((Collection<? extends StagedValue>)newValue);
				return;
			case ModelPackage.TRIAL__PREDICTIONS:
				getPredictions().clear();
				getPredictions().addAll((Collection<? extends Prediction>)newValue);
				return;
			case ModelPackage.TRIAL__LOG:
				getLog().clear();
				getLog().addAll((Collection<? extends LogEntry>)newValue);
				return;
			case ModelPackage.TRIAL__LOGGERS:
				getLoggers().clear();
				getLoggers().addAll((Collection<? extends LoggerFile>)newValue);
				return;
			case ModelPackage.TRIAL__PIECES:
				getPieces().clear();
				getPieces().addAll((Collection<? extends Piece>)newValue);
				return;
			case ModelPackage.TRIAL__REMAINS:
				setRemains((RemainsSheet)newValue);
				return;
			case ModelPackage.TRIAL__SAMPLES:
				getSamples().clear();
				getSamples().addAll((Collection<? extends Sample>)newValue);
				return;
			case ModelPackage.TRIAL__ANALYSES:
				getAnalyses().clear();
				getAnalyses().addAll((Collection<? extends Analysis>)newValue);
				return;
			case ModelPackage.TRIAL__FILES:
				getFiles().clear();
				getFiles().addAll((Collection<? extends DataFile>)newValue);
				return;
			case ModelPackage.TRIAL__VISITS:
				getVisits().clear();
				getVisits().addAll((Collection<? extends Visit>)newValue);
				return;
			case ModelPackage.TRIAL__READY_BECAUSE:
				setReadyBecause((String)newValue);
				return;
			case ModelPackage.TRIAL__MEASURES:
				getMeasures().clear();
				getMeasures().addAll((Collection<? extends Measure>)newValue);
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
			case ModelPackage.TRIAL__NUMBER:
				setNumber(NUMBER_EDEFAULT);
				return;
			case ModelPackage.TRIAL__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.TRIAL__STATUS:
				setStatus(STATUS_EDEFAULT);
				return;
			case ModelPackage.TRIAL__ON:
				setOn(ON_EDEFAULT);
				return;
			case ModelPackage.TRIAL__BUILD:
				setBuild((FurnaceBuild)null);
				return;
			case ModelPackage.TRIAL__RECONSTRUCTION:
				setReconstruction((Reconstruction)null);
				return;
			case ModelPackage.TRIAL__REPEAT_OF:
				setRepeatOf((Trial)null);
				return;
			case ModelPackage.TRIAL__LEADER:
				setLeader((Person)null);
				return;
			case ModelPackage.TRIAL__PEOPLE:
				getPeople().clear();
				return;
			case ModelPackage.TRIAL__LOTS:
				getLots().clear();
				return;
			case ModelPackage.TRIAL__EXCLUDED:
				setExcluded(EXCLUDED_EDEFAULT);
				return;
			case ModelPackage.TRIAL__EXCLUDED_BECAUSE:
				setExcludedBecause(EXCLUDED_BECAUSE_EDEFAULT);
				return;
			case ModelPackage.TRIAL__CONCLUSION:
				setConclusion(CONCLUSION_EDEFAULT);
				return;
			case ModelPackage.TRIAL__VALUES:
				getValues().clear();
				return;
			case ModelPackage.TRIAL__PREDICTIONS:
				getPredictions().clear();
				return;
			case ModelPackage.TRIAL__LOG:
				getLog().clear();
				return;
			case ModelPackage.TRIAL__LOGGERS:
				getLoggers().clear();
				return;
			case ModelPackage.TRIAL__PIECES:
				getPieces().clear();
				return;
			case ModelPackage.TRIAL__REMAINS:
				setRemains((RemainsSheet)null);
				return;
			case ModelPackage.TRIAL__SAMPLES:
				getSamples().clear();
				return;
			case ModelPackage.TRIAL__ANALYSES:
				getAnalyses().clear();
				return;
			case ModelPackage.TRIAL__FILES:
				getFiles().clear();
				return;
			case ModelPackage.TRIAL__VISITS:
				getVisits().clear();
				return;
			case ModelPackage.TRIAL__READY_BECAUSE:
				setReadyBecause(READY_BECAUSE_EDEFAULT);
				return;
			case ModelPackage.TRIAL__MEASURES:
				getMeasures().clear();
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
			case ModelPackage.TRIAL__NUMBER:
				return NUMBER_EDEFAULT == null ? number != null : !NUMBER_EDEFAULT.equals(number);
			case ModelPackage.TRIAL__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case ModelPackage.TRIAL__STATUS:
				return STATUS_EDEFAULT == null ? status != null : !STATUS_EDEFAULT.equals(status);
			case ModelPackage.TRIAL__ON:
				return ON_EDEFAULT == null ? on != null : !ON_EDEFAULT.equals(on);
			case ModelPackage.TRIAL__BUILD:
				return build != null;
			case ModelPackage.TRIAL__RECONSTRUCTION:
				return reconstruction != null;
			case ModelPackage.TRIAL__REPEAT_OF:
				return repeatOf != null;
			case ModelPackage.TRIAL__LEADER:
				return leader != null;
			case ModelPackage.TRIAL__PEOPLE:
				return people != null && !people.isEmpty();
			case ModelPackage.TRIAL__LOTS:
				return lots != null && !lots.isEmpty();
			case ModelPackage.TRIAL__EXCLUDED:
				return excluded != EXCLUDED_EDEFAULT;
			case ModelPackage.TRIAL__EXCLUDED_BECAUSE:
				return EXCLUDED_BECAUSE_EDEFAULT == null ? excludedBecause != null : !EXCLUDED_BECAUSE_EDEFAULT.equals(excludedBecause);
			case ModelPackage.TRIAL__CONCLUSION:
				return CONCLUSION_EDEFAULT == null ? conclusion != null : !CONCLUSION_EDEFAULT.equals(conclusion);
			case ModelPackage.TRIAL__VALUES:
				return values != null && !values.isEmpty();
			case ModelPackage.TRIAL__PREDICTIONS:
				return predictions != null && !predictions.isEmpty();
			case ModelPackage.TRIAL__LOG:
				return log != null && !log.isEmpty();
			case ModelPackage.TRIAL__LOGGERS:
				return loggers != null && !loggers.isEmpty();
			case ModelPackage.TRIAL__PIECES:
				return pieces != null && !pieces.isEmpty();
			case ModelPackage.TRIAL__REMAINS:
				return remains != null;
			case ModelPackage.TRIAL__SAMPLES:
				return samples != null && !samples.isEmpty();
			case ModelPackage.TRIAL__ANALYSES:
				return analyses != null && !analyses.isEmpty();
			case ModelPackage.TRIAL__FILES:
				return files != null && !files.isEmpty();
			case ModelPackage.TRIAL__VISITS:
				return visits != null && !visits.isEmpty();
			case ModelPackage.TRIAL__READY_BECAUSE:
				return READY_BECAUSE_EDEFAULT == null ? readyBecause != null : !READY_BECAUSE_EDEFAULT.equals(readyBecause);
			case ModelPackage.TRIAL__MEASURES:
				return measures != null && !measures.isEmpty();
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
		result.append(" (number: ");
		result.append(number);
		result.append(", kind: ");
		result.append(kind);
		result.append(", status: ");
		result.append(status);
		result.append(", on: ");
		result.append(on);
		result.append(", excluded: ");
		result.append(excluded);
		result.append(", excludedBecause: ");
		result.append(excludedBecause);
		result.append(", conclusion: ");
		result.append(conclusion);
		result.append(", readyBecause: ");
		result.append(readyBecause);
		result.append(')');
		return result.toString();
	}

} //TrialImpl
