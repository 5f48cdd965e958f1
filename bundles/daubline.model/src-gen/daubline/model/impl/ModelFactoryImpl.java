/**
 */
package daubline.model.impl;

import daubline.base.Basis;
import daubline.base.Confidence;
import daubline.base.HowGot;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.ValueKind;

import daubline.model.*;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class ModelFactoryImpl extends EFactoryImpl implements ModelFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static ModelFactory init() {
		try {
			ModelFactory theModelFactory = (ModelFactory)EPackage.Registry.INSTANCE.getEFactory(ModelPackage.eNS_URI);
			if (theModelFactory != null) {
				return theModelFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new ModelFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case ModelPackage.STUDY: return createStudy();
			case ModelPackage.PERSON: return createPerson();
			case ModelPackage.CITATION: return createCitation();
			case ModelPackage.VARIABLE_DEFINITION: return createVariableDefinition();
			case ModelPackage.RESIDUE_CLASS: return createResidueClass();
			case ModelPackage.SETTING: return createSetting();
			case ModelPackage.IMPORT_MAPPING: return createImportMapping();
			case ModelPackage.HAZARD: return createHazard();
			case ModelPackage.PERMISSION: return createPermission();
			case ModelPackage.READING: return createReading();
			case ModelPackage.EARLIER: return createEarlier();
			case ModelPackage.CLAIM: return createClaim();
			case ModelPackage.CLAIM_INPUT: return createClaimInput();
			case ModelPackage.STAGED_VALUE: return createStagedValue();
			case ModelPackage.CHOICE: return createChoice();
			case ModelPackage.PREDICTION: return createPrediction();
			case ModelPackage.RESIDUE_MASS: return createResidueMass();
			case ModelPackage.COMPONENT: return createComponent();
			case ModelPackage.ANALYSIS: return createAnalysis();
			case ModelPackage.EVIDENCE_SHEET: return createEvidenceSheet();
			case ModelPackage.REMAINS_SHEET: return createRemainsSheet();
			case ModelPackage.BLIND_RECORDING: return createBlindRecording();
			case ModelPackage.WALL_ZONE: return createWallZone();
			case ModelPackage.SPREAD_SQUARE: return createSpreadSquare();
			case ModelPackage.SITE: return createSite();
			case ModelPackage.CONTEXT: return createContext();
			case ModelPackage.RECONSTRUCTION: return createReconstruction();
			case ModelPackage.LOT: return createLot();
			case ModelPackage.TREATMENT: return createTreatment();
			case ModelPackage.SIZE_BAND: return createSizeBand();
			case ModelPackage.MIX_PART: return createMixPart();
			case ModelPackage.FURNACE_BUILD: return createFurnaceBuild();
			case ModelPackage.SERIES: return createSeries();
			case ModelPackage.FACTOR: return createFactor();
			case ModelPackage.FORBIDDEN_COMBINATION: return createForbiddenCombination();
			case ModelPackage.PROVISION: return createProvision();
			case ModelPackage.LABOUR: return createLabour();
			case ModelPackage.FROZEN_PLAN: return createFrozenPlan();
			case ModelPackage.PLANNED_RUN: return createPlannedRun();
			case ModelPackage.ROLE_ASSIGNMENT: return createRoleAssignment();
			case ModelPackage.TRIAL: return createTrial();
			case ModelPackage.LOG_ENTRY: return createLogEntry();
			case ModelPackage.CHARGE: return createCharge();
			case ModelPackage.CHARGE_ITEM: return createChargeItem();
			case ModelPackage.MEASURE: return createMeasure();
			case ModelPackage.INCIDENT: return createIncident();
			case ModelPackage.DATA_FILE: return createDataFile();
			case ModelPackage.MEASUREMENT: return createMeasurement();
			case ModelPackage.LOGGER_FILE: return createLoggerFile();
			case ModelPackage.CHANNEL: return createChannel();
			case ModelPackage.PIECE: return createPiece();
			case ModelPackage.SAMPLE: return createSample();
			case ModelPackage.VISIT: return createVisit();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case ModelPackage.BASIS:
				return createBasisFromString(eDataType, initialValue);
			case ModelPackage.CONFIDENCE:
				return createConfidenceFromString(eDataType, initialValue);
			case ModelPackage.HOW_GOT:
				return createHowGotFromString(eDataType, initialValue);
			case ModelPackage.IRON_BASIS:
				return createIronBasisFromString(eDataType, initialValue);
			case ModelPackage.MATERIAL:
				return createMaterialFromString(eDataType, initialValue);
			case ModelPackage.STAGE:
				return createStageFromString(eDataType, initialValue);
			case ModelPackage.TRIAL_KIND:
				return createTrialKindFromString(eDataType, initialValue);
			case ModelPackage.TRIAL_STATUS:
				return createTrialStatusFromString(eDataType, initialValue);
			case ModelPackage.VALUE_KIND:
				return createValueKindFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case ModelPackage.BASIS:
				return convertBasisToString(eDataType, instanceValue);
			case ModelPackage.CONFIDENCE:
				return convertConfidenceToString(eDataType, instanceValue);
			case ModelPackage.HOW_GOT:
				return convertHowGotToString(eDataType, instanceValue);
			case ModelPackage.IRON_BASIS:
				return convertIronBasisToString(eDataType, instanceValue);
			case ModelPackage.MATERIAL:
				return convertMaterialToString(eDataType, instanceValue);
			case ModelPackage.STAGE:
				return convertStageToString(eDataType, instanceValue);
			case ModelPackage.TRIAL_KIND:
				return convertTrialKindToString(eDataType, instanceValue);
			case ModelPackage.TRIAL_STATUS:
				return convertTrialStatusToString(eDataType, instanceValue);
			case ModelPackage.VALUE_KIND:
				return convertValueKindToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Study createStudy() {
		StudyImpl study = new StudyImpl();
		return study;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Person createPerson() {
		PersonImpl person = new PersonImpl();
		return person;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Citation createCitation() {
		CitationImpl citation = new CitationImpl();
		return citation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VariableDefinition createVariableDefinition() {
		VariableDefinitionImpl variableDefinition = new VariableDefinitionImpl();
		return variableDefinition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ResidueClass createResidueClass() {
		ResidueClassImpl residueClass = new ResidueClassImpl();
		return residueClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Setting createSetting() {
		SettingImpl setting = new SettingImpl();
		return setting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ImportMapping createImportMapping() {
		ImportMappingImpl importMapping = new ImportMappingImpl();
		return importMapping;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Hazard createHazard() {
		HazardImpl hazard = new HazardImpl();
		return hazard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Permission createPermission() {
		PermissionImpl permission = new PermissionImpl();
		return permission;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reading createReading() {
		ReadingImpl reading = new ReadingImpl();
		return reading;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Earlier createEarlier() {
		EarlierImpl earlier = new EarlierImpl();
		return earlier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Claim createClaim() {
		ClaimImpl claim = new ClaimImpl();
		return claim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ClaimInput createClaimInput() {
		ClaimInputImpl claimInput = new ClaimInputImpl();
		return claimInput;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StagedValue createStagedValue() {
		StagedValueImpl stagedValue = new StagedValueImpl();
		return stagedValue;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Choice createChoice() {
		ChoiceImpl choice = new ChoiceImpl();
		return choice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Prediction createPrediction() {
		PredictionImpl prediction = new PredictionImpl();
		return prediction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ResidueMass createResidueMass() {
		ResidueMassImpl residueMass = new ResidueMassImpl();
		return residueMass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Component createComponent() {
		ComponentImpl component = new ComponentImpl();
		return component;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Analysis createAnalysis() {
		AnalysisImpl analysis = new AnalysisImpl();
		return analysis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EvidenceSheet createEvidenceSheet() {
		EvidenceSheetImpl evidenceSheet = new EvidenceSheetImpl();
		return evidenceSheet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RemainsSheet createRemainsSheet() {
		RemainsSheetImpl remainsSheet = new RemainsSheetImpl();
		return remainsSheet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BlindRecording createBlindRecording() {
		BlindRecordingImpl blindRecording = new BlindRecordingImpl();
		return blindRecording;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WallZone createWallZone() {
		WallZoneImpl wallZone = new WallZoneImpl();
		return wallZone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SpreadSquare createSpreadSquare() {
		SpreadSquareImpl spreadSquare = new SpreadSquareImpl();
		return spreadSquare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Site createSite() {
		SiteImpl site = new SiteImpl();
		return site;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Context createContext() {
		ContextImpl context = new ContextImpl();
		return context;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reconstruction createReconstruction() {
		ReconstructionImpl reconstruction = new ReconstructionImpl();
		return reconstruction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lot createLot() {
		LotImpl lot = new LotImpl();
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Treatment createTreatment() {
		TreatmentImpl treatment = new TreatmentImpl();
		return treatment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SizeBand createSizeBand() {
		SizeBandImpl sizeBand = new SizeBandImpl();
		return sizeBand;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MixPart createMixPart() {
		MixPartImpl mixPart = new MixPartImpl();
		return mixPart;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FurnaceBuild createFurnaceBuild() {
		FurnaceBuildImpl furnaceBuild = new FurnaceBuildImpl();
		return furnaceBuild;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Series createSeries() {
		SeriesImpl series = new SeriesImpl();
		return series;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Factor createFactor() {
		FactorImpl factor = new FactorImpl();
		return factor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ForbiddenCombination createForbiddenCombination() {
		ForbiddenCombinationImpl forbiddenCombination = new ForbiddenCombinationImpl();
		return forbiddenCombination;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Provision createProvision() {
		ProvisionImpl provision = new ProvisionImpl();
		return provision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Labour createLabour() {
		LabourImpl labour = new LabourImpl();
		return labour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FrozenPlan createFrozenPlan() {
		FrozenPlanImpl frozenPlan = new FrozenPlanImpl();
		return frozenPlan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PlannedRun createPlannedRun() {
		PlannedRunImpl plannedRun = new PlannedRunImpl();
		return plannedRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoleAssignment createRoleAssignment() {
		RoleAssignmentImpl roleAssignment = new RoleAssignmentImpl();
		return roleAssignment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Trial createTrial() {
		TrialImpl trial = new TrialImpl();
		return trial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LogEntry createLogEntry() {
		LogEntryImpl logEntry = new LogEntryImpl();
		return logEntry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Charge createCharge() {
		ChargeImpl charge = new ChargeImpl();
		return charge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ChargeItem createChargeItem() {
		ChargeItemImpl chargeItem = new ChargeItemImpl();
		return chargeItem;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measure createMeasure() {
		MeasureImpl measure = new MeasureImpl();
		return measure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Incident createIncident() {
		IncidentImpl incident = new IncidentImpl();
		return incident;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DataFile createDataFile() {
		DataFileImpl dataFile = new DataFileImpl();
		return dataFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measurement createMeasurement() {
		MeasurementImpl measurement = new MeasurementImpl();
		return measurement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LoggerFile createLoggerFile() {
		LoggerFileImpl loggerFile = new LoggerFileImpl();
		return loggerFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Channel createChannel() {
		ChannelImpl channel = new ChannelImpl();
		return channel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Piece createPiece() {
		PieceImpl piece = new PieceImpl();
		return piece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Sample createSample() {
		SampleImpl sample = new SampleImpl();
		return sample;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Visit createVisit() {
		VisitImpl visit = new VisitImpl();
		return visit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Basis createBasisFromString(EDataType eDataType, String initialValue) {
		return (Basis)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBasisToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Confidence createConfidenceFromString(EDataType eDataType, String initialValue) {
		return (Confidence)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertConfidenceToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HowGot createHowGotFromString(EDataType eDataType, String initialValue) {
		return (HowGot)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHowGotToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public IronBasis createIronBasisFromString(EDataType eDataType, String initialValue) {
		return (IronBasis)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertIronBasisToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Material createMaterialFromString(EDataType eDataType, String initialValue) {
		return (Material)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMaterialToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Stage createStageFromString(EDataType eDataType, String initialValue) {
		return (Stage)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStageToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TrialKind createTrialKindFromString(EDataType eDataType, String initialValue) {
		return (TrialKind)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTrialKindToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TrialStatus createTrialStatusFromString(EDataType eDataType, String initialValue) {
		return (TrialStatus)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTrialStatusToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ValueKind createValueKindFromString(EDataType eDataType, String initialValue) {
		return (ValueKind)super.createFromString(eDataType, initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertValueKindToString(EDataType eDataType, Object instanceValue) {
		return super.convertToString(eDataType, instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ModelPackage getModelPackage() {
		return (ModelPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static ModelPackage getPackage() {
		return ModelPackage.eINSTANCE;
	}

} //ModelFactoryImpl
