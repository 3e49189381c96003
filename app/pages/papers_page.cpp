#include "app/pages/papers_page.h"
#include "app/pages/background.h"
#include "app/pages/entries.h"
#include "app/pages/papers_folder.h"
#include "app/pages/unprintable.h"
#include <QDir>
#include <QPointer>
#include <QRegularExpression>

namespace app {

using model::ErrorCode;
using model::fail;
using model::Result;

namespace {

QString kindWords(const QString &fileName) {
    if (fileName.endsWith(QLatin1String(".pdf")))
        return QObject::tr("large print");
    if (fileName.endsWith(QLatin1String(".brf")))
        return QObject::tr("braille");
    if (fileName.endsWith(QLatin1String(".html")))
        return QObject::tr("web page");
    return QObject::tr("plain text");
}

} // namespace

PapersPage::~PapersPage() {
    *m_stop = true;
    m_pictures.clear();
}

const reports::Paper *PapersPage::paperInHand() const {
    for (const auto &paper : m_papers)
        if (text(paper.fileName) == m_row)
            return &paper;
    return nullptr;
}

void PapersPage::refresh() {
    m_kicker = m_papers.empty() ? tr("Made from what is recorded now")
                                : counted(m_papers.size(), tr("1 paper"), tr("%1 papers"));
    if (m_folder.isEmpty())
        m_folder = papersFolder(m_session);
    setFields({{{.key = "folder",
                 .kind = FieldKind::Folder,
                 .label = tr("Folder for the papers"),
                 .hint = tr("What is written there is not encrypted any more")},
                [this] { return m_folder; },
                [this](model::Case &, const QString &typed) -> Result<void> {
                    if (!QDir::isAbsolutePath(typed.trimmed()))
                        return fail(ErrorCode::NotUnderstood,
                                    tr("Not a whole path: %1. Begin at the root, for example %2. Kept.")
                                        .arg(typed, QDir::homePath())
                                        .toStdString());
                    m_folder = typed.trimmed();
                    m_session.keepSetting(QStringLiteral("papersFolder"), m_folder);
                    return {};
                }}});
    const QString busy = m_working ? tr("The papers are being made.") : QString();
    std::vector<ActionRow> actions;
    if (m_working)
        actions.push_back({.key = "stop", .title = tr("Stop")});
    actions.push_back(
        {.key = "make", .title = tr("Make the papers"), .primary = m_papers.empty(), .unavailable = busy});
    actions.push_back({.key = "write",
                       .title = tr("Write them into the folder"),
                       .primary = !m_papers.empty(),
                       .unavailable = m_papers.empty() ? tr("Make the papers first.") : QString()});
    m_actions.setRows(std::move(actions));
    std::vector<ListRow> rows;
    for (const auto &paper : m_papers)
        rows.push_back({.key = text(paper.fileName),
                        .title = text(paper.title),
                        .amount = kindWords(text(paper.fileName)),
                        .facts = tr("%1 kilobytes").arg((paper.bytes.size() + 1023) / 1024)});
    m_rowsLabel = tr("Papers");
    m_rowsEmpty = noPapersWords();
    m_rows.setRows(std::move(rows));
    std::vector<FindingRow> findings{
        {.key = "caution",
         .kind = "caution",
         .answer = tr("Nothing is handed over untried: the client reads or feels each kind of mark "
                      "and says what it means.")}};
    if (!record().plan || record().plan->lines.empty())
        findings.push_back({.key = "noPlan",
                            .kind = "caution",
                            .answer = tr("There is no plan yet, so the papers hold no places.")});
    else if (!m_session.planChangedSince().empty())
        findings.push_back({.key = "planBefore",
                            .kind = "caution",
                            .answer = tr("The plan was worked out before the last changes: the papers say "
                                         "where things stood in it. Bring it up to date on the plan page "
                                         "first.")});
    m_findings.setRows(std::move(findings));
    emit refreshed();
}

/// Papers themselves live as long as this page; where they were written is known.
QString PapersPage::noPapersWords() const {
    const QString written = m_session.setting(writtenKey());
    return tr("None made since this page was opened.") +
           (written.isEmpty() ? QString() : QLatin1Char(' ') + tr("Last written: %1").arg(written));
}

QString PapersPage::writtenKey() const {
    return QStringLiteral("papersWritten/") + text(record().client.id.text);
}

void PapersPage::act(const QString &key) {
    if (key == QLatin1String("make") && !m_working)
        make();
    else if (key == QLatin1String("write"))
        write();
    else if (key == QLatin1String("stop"))
        *m_stop = true;
    else if (key == QLatin1String("nextPage"))
        showPage(1);
    else if (key == QLatin1String("pageBefore"))
        showPage(-1);
}

void PapersPage::make() {
    m_working = true;
    *m_stop = false;
    m_shell.beginWork(tr("Making the papers."));
    refresh();
    const auto progress = [stop = m_stop, shell = QPointer<ShellViewModel>(&m_shell)](double share,
                                                                                      const std::string &) {
        QMetaObject::invokeMethod(
            shell,
            [shell, share] {
                if (shell)
                    shell->showProgress(share);
            },
            Qt::QueuedConnection);
        return !stop->load();
    };
    inBackground(
        this,
        [copy = m_session.ownShare(), own = m_session.record(), on = m_session.today(), progress,
         author = m_session.author().toStdString()] {
            const model::AsWritten english;
            return reports::papers(copy, model::findingsOf(own, on), on, progress, author);
        },
        [this](Result<std::vector<reports::Paper>> made) { take(std::move(made)); });
}

void PapersPage::take(Result<std::vector<reports::Paper>> made) {
    m_working = false;
    if (!made) {
        const QString sentence = text(made.error().sentence);
        m_shell.endWork(sentence + whereTheyStand(sentence, record()));
        refresh();
        return;
    }
    m_papers = std::move(*made);
    refresh();
    m_shell.endWork(counted(m_papers.size(), tr("1 paper made. Not written yet."),
                            tr("%1 papers made. Not written yet.")));
    if (!m_papers.empty())
        moved(text(m_papers.front().fileName));
}

void PapersPage::write() {
    if (const auto written = reports::writePapers(m_papers, m_folder.toStdString()); !written) {
        say(written.error());
        return;
    }
    if (const auto noted = m_session.note("paper.exported", tr("%1 files").arg(m_papers.size())); !noted)
        say(noted.error());
    const QString where = counted(m_papers.size(), tr("1 paper to %2."), tr("%1 papers to %2."))
                              .replace(QLatin1String("%2"), m_folder);
    m_session.keepSetting(writtenKey(),
                          app::shown(std::optional(m_session.today())) + QStringLiteral(", ") + where);
    say(counted(m_papers.size(), tr("1 paper written to %2."), tr("%1 papers written to %2."))
            .replace(QLatin1String("%2"), m_folder));
}

void PapersPage::moved(const QString &row) {
    if (row == m_row)
        return;
    m_row = row;
    if (const auto *paper = paperInHand())
        show(*paper);
}

void PapersPage::show(const reports::Paper &paper) {
    const QString file = text(paper.fileName);
    m_page = 0;
    m_pictures.clear();
    QString words;
    if (file.endsWith(QLatin1String(".pdf")))
        m_pictures.load(QByteArray::fromStdString(paper.bytes));
    // The words of a PDF are those of the plain text of the same paper.
    const QString stem = file.left(file.lastIndexOf(QLatin1Char('.')));
    for (const auto &other : m_papers)
        if (text(other.fileName) == stem + QStringLiteral(".txt"))
            words = text(other.bytes);
    if (file.endsWith(QLatin1String(".brf")))
        words = text(paper.bytes);
    setReading(words.split(QRegularExpression(QStringLiteral("[\\r\\n\\f]+")), Qt::SkipEmptyParts));
    showPage(0);
}

void PapersPage::showPage(int by) {
    const int pages = m_pictures.pageCount();
    if (m_page + by >= 0 && m_page + by < pages)
        m_page += by;
    else if (by != 0)
        say(by > 0 ? tr("This is the last page.") : tr("This is the first page."));
    setPicture(pages > 0 ? m_pictures.source(m_page) : QString(),
               tr("Page %1 of %2").arg(m_page + 1).arg(pages), pages > 1);
    refresh();
}

} // namespace app
