#pragma once
#include "app/viewmodels/row_model.h"
#include <QStringList>

namespace app {

/// One folder as a list to choose a file from: the way up, folders, then files of the wanted kinds. To choose
/// a folder from: the folder itself, which is taken so, the way up, folders.
///
/// Hidden files are left out. Nothing is read but names, sizes and dates.
class FolderListing : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QList<QString> kinds READ kinds WRITE setKinds NOTIFY changed)
    Q_PROPERTY(bool foldersOnly READ foldersOnly WRITE setFoldersOnly NOTIFY changed)
    Q_PROPERTY(QString folder READ folder NOTIFY changed)
    Q_PROPERTY(QString words READ words NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(app::RowModel *rows READ rows CONSTANT)

public:
    explicit FolderListing(QObject *parent = nullptr);
    /// Ends of names, such as "jpg"; none: every file.
    [[nodiscard]] QStringList kinds() const { return m_kinds; }
    void setKinds(const QStringList &kinds);
    /// A folder is wanted, no file.
    [[nodiscard]] bool foldersOnly() const { return m_foldersOnly; }
    void setFoldersOnly(bool only);
    /// The whole path of the folder shown.
    [[nodiscard]] QString folder() const { return m_folder; }
    /// What is in it: "Pictures: 2 folders, 5 files."
    [[nodiscard]] QString words() const { return m_words; }
    /// Why the folder asked for last is not shown; empty: it is.
    [[nodiscard]] QString error() const { return m_error; }
    [[nodiscard]] RowModel *rows() { return &m_rows; }

    /// Shows the folder of a path that was typed, or the one shown last, or the home folder.
    Q_INVOKABLE void start(const QString &typed);
    /// A row was chosen: a folder is shown, of a file, or of the folder that is taken, the path is
    /// the answer. Empty, with `error`, where the folder cannot be read or the file is gone.
    Q_INVOKABLE [[nodiscard]] QString choose(const QString &path);
    /// The row to stand on: the file that was typed, the folder that was left by the way up, else the first.
    Q_INVOKABLE [[nodiscard]] QString startRow() const;

signals:
    void changed();

private:
    bool show(const QString &folder);
    void fill();
    [[nodiscard]] QString wordsFor(qsizetype folders, qsizetype files) const;

    QStringList m_kinds;
    bool m_foldersOnly = false;
    QString m_folder, m_left, m_words, m_error;
    RowModel m_rows;
};

} // namespace app
