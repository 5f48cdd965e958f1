/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Logger File</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A logger's file with the mapping of its columns.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.LoggerFile#getDelimiter <em>Delimiter</em>}</li>
 *   <li>{@link daubline.model.LoggerFile#getDecimal <em>Decimal</em>}</li>
 *   <li>{@link daubline.model.LoggerFile#getHeaderRows <em>Header Rows</em>}</li>
 *   <li>{@link daubline.model.LoggerFile#getTimeColumn <em>Time Column</em>}</li>
 *   <li>{@link daubline.model.LoggerFile#getTimeFormat <em>Time Format</em>}</li>
 *   <li>{@link daubline.model.LoggerFile#getStartAt <em>Start At</em>}</li>
 *   <li>{@link daubline.model.LoggerFile#getOffset <em>Offset</em>}</li>
 *   <li>{@link daubline.model.LoggerFile#getChannels <em>Channels</em>}</li>
 *   <li>{@link daubline.model.LoggerFile#getSyncMark <em>Sync Mark</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getLoggerFile()
 * @model
 * @generated
 */
public interface LoggerFile extends DataFile {
	/**
	 * Returns the value of the '<em><b>Delimiter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Delimiter</em>' attribute.
	 * @see #setDelimiter(String)
	 * @see daubline.model.ModelPackage#getLoggerFile_Delimiter()
	 * @model
	 * @generated
	 */
	String getDelimiter();

	/**
	 * Sets the value of the '{@link daubline.model.LoggerFile#getDelimiter <em>Delimiter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Delimiter</em>' attribute.
	 * @see #getDelimiter()
	 * @generated
	 */
	void setDelimiter(String value);

	/**
	 * Returns the value of the '<em><b>Decimal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Decimal</em>' attribute.
	 * @see #setDecimal(String)
	 * @see daubline.model.ModelPackage#getLoggerFile_Decimal()
	 * @model
	 * @generated
	 */
	String getDecimal();

	/**
	 * Sets the value of the '{@link daubline.model.LoggerFile#getDecimal <em>Decimal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Decimal</em>' attribute.
	 * @see #getDecimal()
	 * @generated
	 */
	void setDecimal(String value);

	/**
	 * Returns the value of the '<em><b>Header Rows</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Header Rows</em>' attribute.
	 * @see #setHeaderRows(Integer)
	 * @see daubline.model.ModelPackage#getLoggerFile_HeaderRows()
	 * @model
	 * @generated
	 */
	Integer getHeaderRows();

	/**
	 * Sets the value of the '{@link daubline.model.LoggerFile#getHeaderRows <em>Header Rows</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Header Rows</em>' attribute.
	 * @see #getHeaderRows()
	 * @generated
	 */
	void setHeaderRows(Integer value);

	/**
	 * Returns the value of the '<em><b>Time Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Time Column</em>' attribute.
	 * @see #setTimeColumn(Integer)
	 * @see daubline.model.ModelPackage#getLoggerFile_TimeColumn()
	 * @model
	 * @generated
	 */
	Integer getTimeColumn();

	/**
	 * Sets the value of the '{@link daubline.model.LoggerFile#getTimeColumn <em>Time Column</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time Column</em>' attribute.
	 * @see #getTimeColumn()
	 * @generated
	 */
	void setTimeColumn(Integer value);

	/**
	 * Returns the value of the '<em><b>Time Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Time Format</em>' attribute.
	 * @see #setTimeFormat(String)
	 * @see daubline.model.ModelPackage#getLoggerFile_TimeFormat()
	 * @model
	 * @generated
	 */
	String getTimeFormat();

	/**
	 * Sets the value of the '{@link daubline.model.LoggerFile#getTimeFormat <em>Time Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time Format</em>' attribute.
	 * @see #getTimeFormat()
	 * @generated
	 */
	void setTimeFormat(String value);

	/**
	 * Returns the value of the '<em><b>Start At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Start At</em>' attribute.
	 * @see #setStartAt(String)
	 * @see daubline.model.ModelPackage#getLoggerFile_StartAt()
	 * @model
	 * @generated
	 */
	String getStartAt();

	/**
	 * Sets the value of the '{@link daubline.model.LoggerFile#getStartAt <em>Start At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Start At</em>' attribute.
	 * @see #getStartAt()
	 * @generated
	 */
	void setStartAt(String value);

	/**
	 * Returns the value of the '<em><b>Offset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Offset</em>' attribute.
	 * @see #setOffset(Double)
	 * @see daubline.model.ModelPackage#getLoggerFile_Offset()
	 * @model
	 * @generated
	 */
	Double getOffset();

	/**
	 * Sets the value of the '{@link daubline.model.LoggerFile#getOffset <em>Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offset</em>' attribute.
	 * @see #getOffset()
	 * @generated
	 */
	void setOffset(Double value);

	/**
	 * Returns the value of the '<em><b>Channels</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Channel}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Channels</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getLoggerFile_Channels()
	 * @model containment="true"
	 * @generated
	 */
	EList<Channel> getChannels();

	/**
	 * Returns the value of the '<em><b>Sync Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sync Mark</em>' attribute.
	 * @see #setSyncMark(String)
	 * @see daubline.model.ModelPackage#getLoggerFile_SyncMark()
	 * @model
	 * @generated
	 */
	String getSyncMark();

	/**
	 * Sets the value of the '{@link daubline.model.LoggerFile#getSyncMark <em>Sync Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sync Mark</em>' attribute.
	 * @see #getSyncMark()
	 * @generated
	 */
	void setSyncMark(String value);

} // LoggerFile
