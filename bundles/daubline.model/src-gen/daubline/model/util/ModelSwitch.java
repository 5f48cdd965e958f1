/**
 */
package daubline.model.util;

import daubline.model.*;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see daubline.model.ModelPackage
 * @generated
 */
public class ModelSwitch<T> extends Switch<T> {
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static ModelPackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelSwitch() {
		if (modelPackage == null) {
			modelPackage = ModelPackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage) {
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject) {
		switch (classifierID) {
			case ModelPackage.IDENTIFIED: {
				Identified identified = (Identified)theEObject;
				T result = caseIdentified(identified);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.NAMED: {
				Named named = (Named)theEObject;
				T result = caseNamed(named);
				if (result == null) result = caseIdentified(named);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STUDY: {
				Study study = (Study)theEObject;
				T result = caseStudy(study);
				if (result == null) result = caseNamed(study);
				if (result == null) result = caseIdentified(study);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PERSON: {
				Person person = (Person)theEObject;
				T result = casePerson(person);
				if (result == null) result = caseNamed(person);
				if (result == null) result = caseIdentified(person);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CITATION: {
				Citation citation = (Citation)theEObject;
				T result = caseCitation(citation);
				if (result == null) result = caseNamed(citation);
				if (result == null) result = caseIdentified(citation);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.VARIABLE_DEFINITION: {
				VariableDefinition variableDefinition = (VariableDefinition)theEObject;
				T result = caseVariableDefinition(variableDefinition);
				if (result == null) result = caseIdentified(variableDefinition);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RESIDUE_CLASS: {
				ResidueClass residueClass = (ResidueClass)theEObject;
				T result = caseResidueClass(residueClass);
				if (result == null) result = caseIdentified(residueClass);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SETTING: {
				Setting setting = (Setting)theEObject;
				T result = caseSetting(setting);
				if (result == null) result = caseIdentified(setting);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.IMPORT_MAPPING: {
				ImportMapping importMapping = (ImportMapping)theEObject;
				T result = caseImportMapping(importMapping);
				if (result == null) result = caseNamed(importMapping);
				if (result == null) result = caseIdentified(importMapping);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.HAZARD: {
				Hazard hazard = (Hazard)theEObject;
				T result = caseHazard(hazard);
				if (result == null) result = caseNamed(hazard);
				if (result == null) result = caseIdentified(hazard);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PERMISSION: {
				Permission permission = (Permission)theEObject;
				T result = casePermission(permission);
				if (result == null) result = caseNamed(permission);
				if (result == null) result = caseIdentified(permission);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.READING: {
				Reading reading = (Reading)theEObject;
				T result = caseReading(reading);
				if (result == null) result = caseIdentified(reading);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.EARLIER: {
				Earlier earlier = (Earlier)theEObject;
				T result = caseEarlier(earlier);
				if (result == null) result = caseIdentified(earlier);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CLAIM: {
				Claim claim = (Claim)theEObject;
				T result = caseClaim(claim);
				if (result == null) result = caseReading(claim);
				if (result == null) result = caseIdentified(claim);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CLAIM_INPUT: {
				ClaimInput claimInput = (ClaimInput)theEObject;
				T result = caseClaimInput(claimInput);
				if (result == null) result = caseReading(claimInput);
				if (result == null) result = caseIdentified(claimInput);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STAGED_VALUE: {
				StagedValue stagedValue = (StagedValue)theEObject;
				T result = caseStagedValue(stagedValue);
				if (result == null) result = caseReading(stagedValue);
				if (result == null) result = caseIdentified(stagedValue);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CHOICE: {
				Choice choice = (Choice)theEObject;
				T result = caseChoice(choice);
				if (result == null) result = caseReading(choice);
				if (result == null) result = caseIdentified(choice);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PREDICTION: {
				Prediction prediction = (Prediction)theEObject;
				T result = casePrediction(prediction);
				if (result == null) result = caseReading(prediction);
				if (result == null) result = caseIdentified(prediction);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RESIDUE_MASS: {
				ResidueMass residueMass = (ResidueMass)theEObject;
				T result = caseResidueMass(residueMass);
				if (result == null) result = caseReading(residueMass);
				if (result == null) result = caseIdentified(residueMass);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.COMPONENT: {
				Component component = (Component)theEObject;
				T result = caseComponent(component);
				if (result == null) result = caseReading(component);
				if (result == null) result = caseIdentified(component);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ANALYSIS: {
				Analysis analysis = (Analysis)theEObject;
				T result = caseAnalysis(analysis);
				if (result == null) result = caseNamed(analysis);
				if (result == null) result = caseIdentified(analysis);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SHEET: {
				Sheet sheet = (Sheet)theEObject;
				T result = caseSheet(sheet);
				if (result == null) result = caseNamed(sheet);
				if (result == null) result = caseIdentified(sheet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.EVIDENCE_SHEET: {
				EvidenceSheet evidenceSheet = (EvidenceSheet)theEObject;
				T result = caseEvidenceSheet(evidenceSheet);
				if (result == null) result = caseSheet(evidenceSheet);
				if (result == null) result = caseNamed(evidenceSheet);
				if (result == null) result = caseIdentified(evidenceSheet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.REMAINS_SHEET: {
				RemainsSheet remainsSheet = (RemainsSheet)theEObject;
				T result = caseRemainsSheet(remainsSheet);
				if (result == null) result = caseSheet(remainsSheet);
				if (result == null) result = caseNamed(remainsSheet);
				if (result == null) result = caseIdentified(remainsSheet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.BLIND_RECORDING: {
				BlindRecording blindRecording = (BlindRecording)theEObject;
				T result = caseBlindRecording(blindRecording);
				if (result == null) result = caseIdentified(blindRecording);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.WALL_ZONE: {
				WallZone wallZone = (WallZone)theEObject;
				T result = caseWallZone(wallZone);
				if (result == null) result = caseIdentified(wallZone);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SPREAD_SQUARE: {
				SpreadSquare spreadSquare = (SpreadSquare)theEObject;
				T result = caseSpreadSquare(spreadSquare);
				if (result == null) result = caseReading(spreadSquare);
				if (result == null) result = caseIdentified(spreadSquare);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SITE: {
				Site site = (Site)theEObject;
				T result = caseSite(site);
				if (result == null) result = caseNamed(site);
				if (result == null) result = caseIdentified(site);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CONTEXT: {
				Context context = (Context)theEObject;
				T result = caseContext(context);
				if (result == null) result = caseNamed(context);
				if (result == null) result = caseIdentified(context);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RECONSTRUCTION: {
				Reconstruction reconstruction = (Reconstruction)theEObject;
				T result = caseReconstruction(reconstruction);
				if (result == null) result = caseNamed(reconstruction);
				if (result == null) result = caseIdentified(reconstruction);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LOT: {
				Lot lot = (Lot)theEObject;
				T result = caseLot(lot);
				if (result == null) result = caseNamed(lot);
				if (result == null) result = caseIdentified(lot);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.TREATMENT: {
				Treatment treatment = (Treatment)theEObject;
				T result = caseTreatment(treatment);
				if (result == null) result = caseNamed(treatment);
				if (result == null) result = caseIdentified(treatment);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SIZE_BAND: {
				SizeBand sizeBand = (SizeBand)theEObject;
				T result = caseSizeBand(sizeBand);
				if (result == null) result = caseReading(sizeBand);
				if (result == null) result = caseIdentified(sizeBand);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MIX_PART: {
				MixPart mixPart = (MixPart)theEObject;
				T result = caseMixPart(mixPart);
				if (result == null) result = caseReading(mixPart);
				if (result == null) result = caseIdentified(mixPart);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.FURNACE_BUILD: {
				FurnaceBuild furnaceBuild = (FurnaceBuild)theEObject;
				T result = caseFurnaceBuild(furnaceBuild);
				if (result == null) result = caseNamed(furnaceBuild);
				if (result == null) result = caseIdentified(furnaceBuild);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SERIES: {
				Series series = (Series)theEObject;
				T result = caseSeries(series);
				if (result == null) result = caseNamed(series);
				if (result == null) result = caseIdentified(series);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.FACTOR: {
				Factor factor = (Factor)theEObject;
				T result = caseFactor(factor);
				if (result == null) result = caseIdentified(factor);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.FORBIDDEN_COMBINATION: {
				ForbiddenCombination forbiddenCombination = (ForbiddenCombination)theEObject;
				T result = caseForbiddenCombination(forbiddenCombination);
				if (result == null) result = caseIdentified(forbiddenCombination);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PROVISION: {
				Provision provision = (Provision)theEObject;
				T result = caseProvision(provision);
				if (result == null) result = caseNamed(provision);
				if (result == null) result = caseIdentified(provision);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LABOUR: {
				Labour labour = (Labour)theEObject;
				T result = caseLabour(labour);
				if (result == null) result = caseIdentified(labour);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.FROZEN_PLAN: {
				FrozenPlan frozenPlan = (FrozenPlan)theEObject;
				T result = caseFrozenPlan(frozenPlan);
				if (result == null) result = caseNamed(frozenPlan);
				if (result == null) result = caseIdentified(frozenPlan);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PLANNED_RUN: {
				PlannedRun plannedRun = (PlannedRun)theEObject;
				T result = casePlannedRun(plannedRun);
				if (result == null) result = caseIdentified(plannedRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ROLE_ASSIGNMENT: {
				RoleAssignment roleAssignment = (RoleAssignment)theEObject;
				T result = caseRoleAssignment(roleAssignment);
				if (result == null) result = caseIdentified(roleAssignment);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.TRIAL: {
				Trial trial = (Trial)theEObject;
				T result = caseTrial(trial);
				if (result == null) result = caseNamed(trial);
				if (result == null) result = caseIdentified(trial);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LOG_ENTRY: {
				LogEntry logEntry = (LogEntry)theEObject;
				T result = caseLogEntry(logEntry);
				if (result == null) result = caseIdentified(logEntry);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CHARGE: {
				Charge charge = (Charge)theEObject;
				T result = caseCharge(charge);
				if (result == null) result = caseLogEntry(charge);
				if (result == null) result = caseIdentified(charge);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CHARGE_ITEM: {
				ChargeItem chargeItem = (ChargeItem)theEObject;
				T result = caseChargeItem(chargeItem);
				if (result == null) result = caseReading(chargeItem);
				if (result == null) result = caseIdentified(chargeItem);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MEASURE: {
				Measure measure = (Measure)theEObject;
				T result = caseMeasure(measure);
				if (result == null) result = caseNamed(measure);
				if (result == null) result = caseIdentified(measure);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.INCIDENT: {
				Incident incident = (Incident)theEObject;
				T result = caseIncident(incident);
				if (result == null) result = caseLogEntry(incident);
				if (result == null) result = caseIdentified(incident);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DATA_FILE: {
				DataFile dataFile = (DataFile)theEObject;
				T result = caseDataFile(dataFile);
				if (result == null) result = caseNamed(dataFile);
				if (result == null) result = caseIdentified(dataFile);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MEASUREMENT: {
				Measurement measurement = (Measurement)theEObject;
				T result = caseMeasurement(measurement);
				if (result == null) result = caseReading(measurement);
				if (result == null) result = caseIdentified(measurement);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LOGGER_FILE: {
				LoggerFile loggerFile = (LoggerFile)theEObject;
				T result = caseLoggerFile(loggerFile);
				if (result == null) result = caseDataFile(loggerFile);
				if (result == null) result = caseNamed(loggerFile);
				if (result == null) result = caseIdentified(loggerFile);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CHANNEL: {
				Channel channel = (Channel)theEObject;
				T result = caseChannel(channel);
				if (result == null) result = caseNamed(channel);
				if (result == null) result = caseIdentified(channel);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PIECE: {
				Piece piece = (Piece)theEObject;
				T result = casePiece(piece);
				if (result == null) result = caseNamed(piece);
				if (result == null) result = caseIdentified(piece);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SAMPLE: {
				Sample sample = (Sample)theEObject;
				T result = caseSample(sample);
				if (result == null) result = caseNamed(sample);
				if (result == null) result = caseIdentified(sample);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.VISIT: {
				Visit visit = (Visit)theEObject;
				T result = caseVisit(visit);
				if (result == null) result = caseNamed(visit);
				if (result == null) result = caseIdentified(visit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Identified</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Identified</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseIdentified(Identified object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Named</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Named</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseNamed(Named object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Study</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Study</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStudy(Study object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Person</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Person</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePerson(Person object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Citation</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Citation</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCitation(Citation object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Variable Definition</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Variable Definition</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseVariableDefinition(VariableDefinition object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Residue Class</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Residue Class</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseResidueClass(ResidueClass object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Setting</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Setting</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSetting(Setting object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Import Mapping</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Import Mapping</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseImportMapping(ImportMapping object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Hazard</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Hazard</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseHazard(Hazard object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Permission</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Permission</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePermission(Permission object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Reading</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Reading</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReading(Reading object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Earlier</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Earlier</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseEarlier(Earlier object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Claim</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Claim</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClaim(Claim object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Claim Input</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Claim Input</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClaimInput(ClaimInput object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Staged Value</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Staged Value</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStagedValue(StagedValue object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Choice</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Choice</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseChoice(Choice object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Prediction</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Prediction</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePrediction(Prediction object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Residue Mass</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Residue Mass</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseResidueMass(ResidueMass object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Component</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Component</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseComponent(Component object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Analysis</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Analysis</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAnalysis(Analysis object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Sheet</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSheet(Sheet object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Evidence Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Evidence Sheet</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseEvidenceSheet(EvidenceSheet object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Remains Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Remains Sheet</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRemainsSheet(RemainsSheet object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Blind Recording</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Blind Recording</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBlindRecording(BlindRecording object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Wall Zone</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Wall Zone</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWallZone(WallZone object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Spread Square</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Spread Square</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSpreadSquare(SpreadSquare object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Site</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Site</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSite(Site object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Context</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Context</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseContext(Context object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Reconstruction</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Reconstruction</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReconstruction(Reconstruction object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Lot</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Lot</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLot(Lot object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Treatment</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Treatment</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTreatment(Treatment object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Size Band</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Size Band</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSizeBand(SizeBand object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Mix Part</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Mix Part</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMixPart(MixPart object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Furnace Build</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Furnace Build</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFurnaceBuild(FurnaceBuild object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Series</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Series</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSeries(Series object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Factor</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Factor</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFactor(Factor object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Forbidden Combination</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Forbidden Combination</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseForbiddenCombination(ForbiddenCombination object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Provision</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Provision</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProvision(Provision object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Labour</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Labour</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLabour(Labour object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Frozen Plan</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Frozen Plan</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFrozenPlan(FrozenPlan object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Planned Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Planned Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePlannedRun(PlannedRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Role Assignment</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Role Assignment</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRoleAssignment(RoleAssignment object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Trial</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Trial</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTrial(Trial object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Log Entry</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Log Entry</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLogEntry(LogEntry object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Charge</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Charge</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCharge(Charge object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Charge Item</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Charge Item</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseChargeItem(ChargeItem object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Measure</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Measure</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMeasure(Measure object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Incident</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Incident</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseIncident(Incident object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Data File</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Data File</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDataFile(DataFile object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Measurement</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Measurement</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMeasurement(Measurement object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Logger File</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Logger File</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLoggerFile(LoggerFile object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Channel</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Channel</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseChannel(Channel object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Piece</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Piece</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePiece(Piece object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Sample</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Sample</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSample(Sample object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Visit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Visit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseVisit(Visit object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object) {
		return null;
	}

} //ModelSwitch
