/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Study</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One study: the folder a team keeps, shares and publishes.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Study#getFormat <em>Format</em>}</li>
 *   <li>{@link daubline.model.Study#getQuestion <em>Question</em>}</li>
 *   <li>{@link daubline.model.Study#getLanguage <em>Language</em>}</li>
 *   <li>{@link daubline.model.Study#getLicence <em>Licence</em>}</li>
 *   <li>{@link daubline.model.Study#getCreatedOn <em>Created On</em>}</li>
 *   <li>{@link daubline.model.Study#getPeople <em>People</em>}</li>
 *   <li>{@link daubline.model.Study#getCitations <em>Citations</em>}</li>
 *   <li>{@link daubline.model.Study#getVariables <em>Variables</em>}</li>
 *   <li>{@link daubline.model.Study#getResidueClasses <em>Residue Classes</em>}</li>
 *   <li>{@link daubline.model.Study#getLots <em>Lots</em>}</li>
 *   <li>{@link daubline.model.Study#getReconstructions <em>Reconstructions</em>}</li>
 *   <li>{@link daubline.model.Study#getBuilds <em>Builds</em>}</li>
 *   <li>{@link daubline.model.Study#getFiles <em>Files</em>}</li>
 *   <li>{@link daubline.model.Study#getSettings <em>Settings</em>}</li>
 *   <li>{@link daubline.model.Study#getMappings <em>Mappings</em>}</li>
 *   <li>{@link daubline.model.Study#getHazards <em>Hazards</em>}</li>
 *   <li>{@link daubline.model.Study#getPermissions <em>Permissions</em>}</li>
 *   <li>{@link daubline.model.Study#getSites <em>Sites</em>}</li>
 *   <li>{@link daubline.model.Study#getSeries <em>Series</em>}</li>
 *   <li>{@link daubline.model.Study#getBlindRecordings <em>Blind Recordings</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getStudy()
 * @model
 * @generated
 */
public interface Study extends Named {
	/**
	 * Returns the value of the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Format</em>' attribute.
	 * @see #setFormat(int)
	 * @see daubline.model.ModelPackage#getStudy_Format()
	 * @model
	 * @generated
	 */
	int getFormat();

	/**
	 * Sets the value of the '{@link daubline.model.Study#getFormat <em>Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format</em>' attribute.
	 * @see #getFormat()
	 * @generated
	 */
	void setFormat(int value);

	/**
	 * Returns the value of the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Question</em>' attribute.
	 * @see #setQuestion(String)
	 * @see daubline.model.ModelPackage#getStudy_Question()
	 * @model
	 * @generated
	 */
	String getQuestion();

	/**
	 * Sets the value of the '{@link daubline.model.Study#getQuestion <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Question</em>' attribute.
	 * @see #getQuestion()
	 * @generated
	 */
	void setQuestion(String value);

	/**
	 * Returns the value of the '<em><b>Language</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Language</em>' attribute.
	 * @see #setLanguage(String)
	 * @see daubline.model.ModelPackage#getStudy_Language()
	 * @model
	 * @generated
	 */
	String getLanguage();

	/**
	 * Sets the value of the '{@link daubline.model.Study#getLanguage <em>Language</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Language</em>' attribute.
	 * @see #getLanguage()
	 * @generated
	 */
	void setLanguage(String value);

	/**
	 * Returns the value of the '<em><b>Licence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Licence</em>' attribute.
	 * @see #setLicence(String)
	 * @see daubline.model.ModelPackage#getStudy_Licence()
	 * @model
	 * @generated
	 */
	String getLicence();

	/**
	 * Sets the value of the '{@link daubline.model.Study#getLicence <em>Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Licence</em>' attribute.
	 * @see #getLicence()
	 * @generated
	 */
	void setLicence(String value);

	/**
	 * Returns the value of the '<em><b>Created On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Created On</em>' attribute.
	 * @see #setCreatedOn(String)
	 * @see daubline.model.ModelPackage#getStudy_CreatedOn()
	 * @model
	 * @generated
	 */
	String getCreatedOn();

	/**
	 * Sets the value of the '{@link daubline.model.Study#getCreatedOn <em>Created On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Created On</em>' attribute.
	 * @see #getCreatedOn()
	 * @generated
	 */
	void setCreatedOn(String value);

	/**
	 * Returns the value of the '<em><b>People</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Person}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>People</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_People()
	 * @model containment="true"
	 * @generated
	 */
	EList<Person> getPeople();

	/**
	 * Returns the value of the '<em><b>Citations</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Citation}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Citations</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Citations()
	 * @model containment="true"
	 * @generated
	 */
	EList<Citation> getCitations();

	/**
	 * Returns the value of the '<em><b>Variables</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.VariableDefinition}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Variables</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Variables()
	 * @model containment="true"
	 * @generated
	 */
	EList<VariableDefinition> getVariables();

	/**
	 * Returns the value of the '<em><b>Residue Classes</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.ResidueClass}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Residue Classes</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_ResidueClasses()
	 * @model containment="true"
	 * @generated
	 */
	EList<ResidueClass> getResidueClasses();

	/**
	 * Returns the value of the '<em><b>Lots</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Lot}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lots</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Lots()
	 * @model containment="true"
	 * @generated
	 */
	EList<Lot> getLots();

	/**
	 * Returns the value of the '<em><b>Reconstructions</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Reconstruction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reconstructions</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Reconstructions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reconstruction> getReconstructions();

	/**
	 * Returns the value of the '<em><b>Builds</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.FurnaceBuild}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Builds</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Builds()
	 * @model containment="true"
	 * @generated
	 */
	EList<FurnaceBuild> getBuilds();

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.DataFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<DataFile> getFiles();

	/**
	 * Returns the value of the '<em><b>Settings</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Setting}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Settings</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Settings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Setting> getSettings();

	/**
	 * Returns the value of the '<em><b>Mappings</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.ImportMapping}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mappings</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Mappings()
	 * @model containment="true"
	 * @generated
	 */
	EList<ImportMapping> getMappings();

	/**
	 * Returns the value of the '<em><b>Hazards</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Hazard}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hazards</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Hazards()
	 * @model containment="true"
	 * @generated
	 */
	EList<Hazard> getHazards();

	/**
	 * Returns the value of the '<em><b>Permissions</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Permission}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Permissions</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Permissions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Permission> getPermissions();

	/**
	 * Returns the value of the '<em><b>Sites</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Site}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sites</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Sites()
	 * @model containment="true" resolveProxies="true"
	 * @generated
	 */
	EList<Site> getSites();

	/**
	 * Returns the value of the '<em><b>Series</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Series}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Series</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_Series()
	 * @model containment="true" resolveProxies="true"
	 * @generated
	 */
	EList<Series> getSeries();

	/**
	 * Returns the value of the '<em><b>Blind Recordings</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.BlindRecording}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blind Recordings</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getStudy_BlindRecordings()
	 * @model containment="true"
	 * @generated
	 */
	EList<BlindRecording> getBlindRecordings();

} // Study
