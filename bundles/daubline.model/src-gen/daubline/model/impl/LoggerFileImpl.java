/**
 */
package daubline.model.impl;

import daubline.model.Channel;
import daubline.model.LoggerFile;
import daubline.model.ModelPackage;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Logger File</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getDelimiter <em>Delimiter</em>}</li>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getDecimal <em>Decimal</em>}</li>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getHeaderRows <em>Header Rows</em>}</li>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getTimeColumn <em>Time Column</em>}</li>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getTimeFormat <em>Time Format</em>}</li>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getStartAt <em>Start At</em>}</li>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getOffset <em>Offset</em>}</li>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getChannels <em>Channels</em>}</li>
 *   <li>{@link daubline.model.impl.LoggerFileImpl#getSyncMark <em>Sync Mark</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LoggerFileImpl extends DataFileImpl implements LoggerFile {
	/**
	 * The default value of the '{@link #getDelimiter() <em>Delimiter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDelimiter()
	 * @generated
	 * @ordered
	 */
	protected static final String DELIMITER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDelimiter() <em>Delimiter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDelimiter()
	 * @generated
	 * @ordered
	 */
	protected String delimiter = DELIMITER_EDEFAULT;

	/**
	 * The default value of the '{@link #getDecimal() <em>Decimal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDecimal()
	 * @generated
	 * @ordered
	 */
	protected static final String DECIMAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDecimal() <em>Decimal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDecimal()
	 * @generated
	 * @ordered
	 */
	protected String decimal = DECIMAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeaderRows() <em>Header Rows</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeaderRows()
	 * @generated
	 * @ordered
	 */
	protected static final Integer HEADER_ROWS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHeaderRows() <em>Header Rows</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeaderRows()
	 * @generated
	 * @ordered
	 */
	protected Integer headerRows = HEADER_ROWS_EDEFAULT;

	/**
	 * The default value of the '{@link #getTimeColumn() <em>Time Column</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTimeColumn()
	 * @generated
	 * @ordered
	 */
	protected static final Integer TIME_COLUMN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTimeColumn() <em>Time Column</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTimeColumn()
	 * @generated
	 * @ordered
	 */
	protected Integer timeColumn = TIME_COLUMN_EDEFAULT;

	/**
	 * The default value of the '{@link #getTimeFormat() <em>Time Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTimeFormat()
	 * @generated
	 * @ordered
	 */
	protected static final String TIME_FORMAT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTimeFormat() <em>Time Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTimeFormat()
	 * @generated
	 * @ordered
	 */
	protected String timeFormat = TIME_FORMAT_EDEFAULT;

	/**
	 * The default value of the '{@link #getStartAt() <em>Start At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStartAt()
	 * @generated
	 * @ordered
	 */
	protected static final String START_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStartAt() <em>Start At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStartAt()
	 * @generated
	 * @ordered
	 */
	protected String startAt = START_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getOffset() <em>Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffset()
	 * @generated
	 * @ordered
	 */
	protected static final Double OFFSET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOffset() <em>Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffset()
	 * @generated
	 * @ordered
	 */
	protected Double offset = OFFSET_EDEFAULT;

	/**
	 * The cached value of the '{@link #getChannels() <em>Channels</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChannels()
	 * @generated
	 * @ordered
	 */
	protected EList<Channel> channels;

	/**
	 * The default value of the '{@link #getSyncMark() <em>Sync Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSyncMark()
	 * @generated
	 * @ordered
	 */
	protected static final String SYNC_MARK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSyncMark() <em>Sync Mark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSyncMark()
	 * @generated
	 * @ordered
	 */
	protected String syncMark = SYNC_MARK_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LoggerFileImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.LOGGER_FILE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDelimiter() {
		return delimiter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDelimiter(String newDelimiter) {
		String oldDelimiter = delimiter;
		delimiter = newDelimiter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGER_FILE__DELIMITER, oldDelimiter, delimiter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDecimal() {
		return decimal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDecimal(String newDecimal) {
		String oldDecimal = decimal;
		decimal = newDecimal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGER_FILE__DECIMAL, oldDecimal, decimal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getHeaderRows() {
		return headerRows;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeaderRows(Integer newHeaderRows) {
		Integer oldHeaderRows = headerRows;
		headerRows = newHeaderRows;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGER_FILE__HEADER_ROWS, oldHeaderRows, headerRows));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getTimeColumn() {
		return timeColumn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTimeColumn(Integer newTimeColumn) {
		Integer oldTimeColumn = timeColumn;
		timeColumn = newTimeColumn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGER_FILE__TIME_COLUMN, oldTimeColumn, timeColumn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTimeFormat() {
		return timeFormat;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTimeFormat(String newTimeFormat) {
		String oldTimeFormat = timeFormat;
		timeFormat = newTimeFormat;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGER_FILE__TIME_FORMAT, oldTimeFormat, timeFormat));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStartAt() {
		return startAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStartAt(String newStartAt) {
		String oldStartAt = startAt;
		startAt = newStartAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGER_FILE__START_AT, oldStartAt, startAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOffset() {
		return offset;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffset(Double newOffset) {
		Double oldOffset = offset;
		offset = newOffset;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGER_FILE__OFFSET, oldOffset, offset));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Channel> getChannels() {
		if (channels == null) {
			channels = new EObjectContainmentEList<Channel>(Channel.class, this, ModelPackage.LOGGER_FILE__CHANNELS);
		}
		return channels;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSyncMark() {
		return syncMark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSyncMark(String newSyncMark) {
		String oldSyncMark = syncMark;
		syncMark = newSyncMark;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOGGER_FILE__SYNC_MARK, oldSyncMark, syncMark));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.LOGGER_FILE__CHANNELS:
				return ((InternalEList<?>)getChannels()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.LOGGER_FILE__DELIMITER:
				return getDelimiter();
			case ModelPackage.LOGGER_FILE__DECIMAL:
				return getDecimal();
			case ModelPackage.LOGGER_FILE__HEADER_ROWS:
				return getHeaderRows();
			case ModelPackage.LOGGER_FILE__TIME_COLUMN:
				return getTimeColumn();
			case ModelPackage.LOGGER_FILE__TIME_FORMAT:
				return getTimeFormat();
			case ModelPackage.LOGGER_FILE__START_AT:
				return getStartAt();
			case ModelPackage.LOGGER_FILE__OFFSET:
				return getOffset();
			case ModelPackage.LOGGER_FILE__CHANNELS:
				return getChannels();
			case ModelPackage.LOGGER_FILE__SYNC_MARK:
				return getSyncMark();
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
			case ModelPackage.LOGGER_FILE__DELIMITER:
				setDelimiter((String)newValue);
				return;
			case ModelPackage.LOGGER_FILE__DECIMAL:
				setDecimal((String)newValue);
				return;
			case ModelPackage.LOGGER_FILE__HEADER_ROWS:
				setHeaderRows((Integer)newValue);
				return;
			case ModelPackage.LOGGER_FILE__TIME_COLUMN:
				setTimeColumn((Integer)newValue);
				return;
			case ModelPackage.LOGGER_FILE__TIME_FORMAT:
				setTimeFormat((String)newValue);
				return;
			case ModelPackage.LOGGER_FILE__START_AT:
				setStartAt((String)newValue);
				return;
			case ModelPackage.LOGGER_FILE__OFFSET:
				setOffset((Double)newValue);
				return;
			case ModelPackage.LOGGER_FILE__CHANNELS:
				getChannels().clear();
				getChannels().addAll((Collection<? extends Channel>)newValue);
				return;
			case ModelPackage.LOGGER_FILE__SYNC_MARK:
				setSyncMark((String)newValue);
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
			case ModelPackage.LOGGER_FILE__DELIMITER:
				setDelimiter(DELIMITER_EDEFAULT);
				return;
			case ModelPackage.LOGGER_FILE__DECIMAL:
				setDecimal(DECIMAL_EDEFAULT);
				return;
			case ModelPackage.LOGGER_FILE__HEADER_ROWS:
				setHeaderRows(HEADER_ROWS_EDEFAULT);
				return;
			case ModelPackage.LOGGER_FILE__TIME_COLUMN:
				setTimeColumn(TIME_COLUMN_EDEFAULT);
				return;
			case ModelPackage.LOGGER_FILE__TIME_FORMAT:
				setTimeFormat(TIME_FORMAT_EDEFAULT);
				return;
			case ModelPackage.LOGGER_FILE__START_AT:
				setStartAt(START_AT_EDEFAULT);
				return;
			case ModelPackage.LOGGER_FILE__OFFSET:
				setOffset(OFFSET_EDEFAULT);
				return;
			case ModelPackage.LOGGER_FILE__CHANNELS:
				getChannels().clear();
				return;
			case ModelPackage.LOGGER_FILE__SYNC_MARK:
				setSyncMark(SYNC_MARK_EDEFAULT);
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
			case ModelPackage.LOGGER_FILE__DELIMITER:
				return DELIMITER_EDEFAULT == null ? delimiter != null : !DELIMITER_EDEFAULT.equals(delimiter);
			case ModelPackage.LOGGER_FILE__DECIMAL:
				return DECIMAL_EDEFAULT == null ? decimal != null : !DECIMAL_EDEFAULT.equals(decimal);
			case ModelPackage.LOGGER_FILE__HEADER_ROWS:
				return HEADER_ROWS_EDEFAULT == null ? headerRows != null : !HEADER_ROWS_EDEFAULT.equals(headerRows);
			case ModelPackage.LOGGER_FILE__TIME_COLUMN:
				return TIME_COLUMN_EDEFAULT == null ? timeColumn != null : !TIME_COLUMN_EDEFAULT.equals(timeColumn);
			case ModelPackage.LOGGER_FILE__TIME_FORMAT:
				return TIME_FORMAT_EDEFAULT == null ? timeFormat != null : !TIME_FORMAT_EDEFAULT.equals(timeFormat);
			case ModelPackage.LOGGER_FILE__START_AT:
				return START_AT_EDEFAULT == null ? startAt != null : !START_AT_EDEFAULT.equals(startAt);
			case ModelPackage.LOGGER_FILE__OFFSET:
				return OFFSET_EDEFAULT == null ? offset != null : !OFFSET_EDEFAULT.equals(offset);
			case ModelPackage.LOGGER_FILE__CHANNELS:
				return channels != null && !channels.isEmpty();
			case ModelPackage.LOGGER_FILE__SYNC_MARK:
				return SYNC_MARK_EDEFAULT == null ? syncMark != null : !SYNC_MARK_EDEFAULT.equals(syncMark);
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
		result.append(" (delimiter: ");
		result.append(delimiter);
		result.append(", decimal: ");
		result.append(decimal);
		result.append(", headerRows: ");
		result.append(headerRows);
		result.append(", timeColumn: ");
		result.append(timeColumn);
		result.append(", timeFormat: ");
		result.append(timeFormat);
		result.append(", startAt: ");
		result.append(startAt);
		result.append(", offset: ");
		result.append(offset);
		result.append(", syncMark: ");
		result.append(syncMark);
		result.append(')');
		return result.toString();
	}

} //LoggerFileImpl
