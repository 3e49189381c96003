#include "app/viewmodels/folder_listing.h"
#include <QCollator>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <algorithm>

namespace app {
namespace {

QString nameOf(const QDir &folder) {
    return folder.isRoot() ? QObject::tr("the whole computer") : folder.dirName();
}

QString counted(qsizetype n, const QString &one, const QString &many) {
    return n == 1 ? one : many.arg(n);
}

/// Decimal, as shops and systems name sizes.
QString sizeInWords(qint64 bytes) {
    constexpr double kilo = 1000;
    if (bytes < 1000)
        return counted(bytes, QObject::tr("1 byte"), QObject::tr("%1 bytes"));
    const double kilobytes = static_cast<double>(bytes) / kilo;
    if (kilobytes < kilo)
        return counted(qRound64(kilobytes), QObject::tr("1 kilobyte"), QObject::tr("%1 kilobytes"));
    return QObject::tr("%1 megabytes").arg(kilobytes / kilo, 0, 'f', 1);
}

QString dayInWords(const QDateTime &at) {
    return QLocale().toString(at.date(), QStringLiteral("d MMMM yyyy"));
}

/// As the language sorts names; 9 stands before 10. Where no language is set, English: "C" sorts by bytes.
QFileInfoList byName(QFileInfoList entries) {
    const QLocale set;
    QCollator order(set.language() == QLocale::C ? QLocale(QLocale::English) : set);
    order.setCaseSensitivity(Qt::CaseInsensitive);
    order.setNumericMode(true);
    std::ranges::sort(entries, [&order](const QFileInfo &one, const QFileInfo &other) {
        return order.compare(one.fileName(), other.fileName()) < 0;
    });
    return entries;
}

QFileInfoList foldersIn(const QDir &folder) {
    return byName(folder.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::NoSort));
}

QFileInfoList filesIn(const QDir &folder, const QStringList &kinds) {
    QStringList patterns;
    for (const QString &kind : kinds)
        patterns << QStringLiteral("*.") + kind;
    return byName(folder.entryInfoList(patterns, QDir::Files, QDir::NoSort));
}

/// The row that takes the folder shown: no entry of a folder has this name.
constexpr QLatin1String takenAsItIs(".");

} // namespace

FolderListing::FolderListing(QObject *parent) : QObject(parent) {}

void FolderListing::setKinds(const QStringList &kinds) {
    if (kinds == m_kinds)
        return;
    m_kinds = kinds;
    emit changed();
}

void FolderListing::setFoldersOnly(bool only) {
    if (only == m_foldersOnly)
        return;
    m_foldersOnly = only;
    emit changed();
}

void FolderListing::start(const QString &typed) {
    const QFileInfo named(typed.trimmed());
    const QStringList wanted{typed.trimmed().isEmpty() ? QString()
                             : named.isDir()           ? named.filePath()
                                                       : named.path(),
                             m_folder, QDir::homePath(), QDir::rootPath()};
    QString refused;
    for (const QString &folder : wanted) {
        if (folder.isEmpty() || !QDir::isAbsolutePath(folder))
            continue;
        if (show(folder))
            break;
        if (refused.isEmpty())
            refused = m_error;
    }
    m_left = named.isFile() ? named.absoluteFilePath() : QString();
    m_error = refused;
    emit changed();
}

QString FolderListing::choose(const QString &path) {
    const QFileInfo chosen(path == takenAsItIs ? m_folder : path);
    if (path == takenAsItIs && chosen.isDir())
        return m_folder;
    m_left = m_folder;
    if (chosen.isDir()) {
        show(path);
        return {};
    }
    if (chosen.isFile() && chosen.isReadable())
        return path;
    fill();
    m_error = chosen.isFile()
                  ? tr("%1 cannot be read: you may not open it. Take another.").arg(chosen.fileName())
                  : tr("%1 is gone. The list is read anew.").arg(chosen.fileName());
    emit changed();
    return {};
}

QString FolderListing::startRow() const {
    const bool cameDown = QFileInfo(m_folder).path() == m_left;
    return m_rows.indexOf(m_left) >= 0 && !(m_foldersOnly && cameDown) ? m_left : m_rows.keyAt(0);
}

bool FolderListing::show(const QString &folder) {
    const QDir dir(QDir::cleanPath(folder));
    if (!dir.exists() || !dir.isReadable()) {
        m_error = dir.exists() ? tr("The folder %1 cannot be read: you may not open it.").arg(nameOf(dir))
                               : tr("The folder %1 is gone.").arg(nameOf(dir));
        emit changed();
        return false;
    }
    m_folder = dir.absolutePath();
    m_error.clear();
    fill();
    emit changed();
    return true;
}

void FolderListing::fill() {
    const QDir folder(m_folder);
    const QFileInfoList folders = foldersIn(folder);
    const QFileInfoList files = m_foldersOnly ? QFileInfoList() : filesIn(folder, m_kinds);
    std::vector<ListRow> rows;
    if (m_foldersOnly)
        rows.push_back({.key = takenAsItIs, .title = tr("Take this folder, %1").arg(nameOf(folder))});
    if (QDir above = folder; above.cdUp())
        rows.push_back({.key = above.absolutePath(), .title = tr("Up, to %1").arg(nameOf(above))});
    for (const QFileInfo &one : folders)
        rows.push_back({.key = one.absoluteFilePath(), .title = one.fileName(), .facts = tr("folder")});
    for (const QFileInfo &one : files)
        rows.push_back({.key = one.absoluteFilePath(),
                        .title = one.fileName(),
                        .facts = tr("%1, %2").arg(sizeInWords(one.size()), dayInWords(one.lastModified()))});
    m_rows.setRows({}); // rows of another folder are other rows, although the way up may have had one of them
    m_rows.setRows(std::move(rows));
    m_words = wordsFor(folders.size(), files.size());
}

QString FolderListing::wordsFor(qsizetype folders, qsizetype files) const {
    const QString name = nameOf(QDir(m_folder));
    const QString counts = counted(folders, tr("1 folder"), tr("%1 folders"));
    if (m_foldersOnly)
        return tr("%1: %2.").arg(name, counts);
    const QString kinds = m_kinds.join(QStringLiteral(", "));
    const QString of = files == 0 && !m_kinds.isEmpty() ? tr("no file of the kinds %1").arg(kinds)
                       : files == 0                     ? tr("no file")
                                                        : counted(files, tr("1 file"), tr("%1 files"));
    return tr("%1: %2, %3.").arg(name, counts, of);
}

} // namespace app
