#pragma once
#include "model/case.h"
#include "model/findings.h"
#include "model/lexicon.h"
#include "model/plan_basis.h"
#include "model/plan_wishes.h"
#include "model/planning.h"
#include "model/shared_kitchen.h"
#include "model/store.h"
#include "model/together.h"
#include "reports/labels.h"
#include <QObject>
#include <QString>
#include <functional>
#include <map>
#include <optional>
#include <vector>

namespace app {

/// What follows from the whole of a plan, the same at each of its lines.
struct PlanTold {
    std::map<std::string, reports::Label> labels; // the first of each thing that gets one
    std::vector<model::PlanFigure> figures;
    std::vector<std::string> broken; // rules of today that it breaks
};

/// The open caseload and the client in hand: the one place where records change.
///
/// Each edit is one action: it is saved before it is shown, and can be undone. The practice caseload lives in
/// memory only.
class Session : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    void openPractice();
    void openStore(model::Store store, const QString &author);
    /// Closes records and client; the key is wiped.
    void close();
    [[nodiscard]] bool isOpen() const { return m_store || m_practice; }
    [[nodiscard]] bool isPractice() const { return m_practice.has_value(); }
    [[nodiscard]] model::Store *store() { return m_store ? &*m_store : nullptr; }
    [[nodiscard]] QString author() const { return m_author; }

    [[nodiscard]] model::Result<std::vector<model::ClientSummary>> caseload() const;
    [[nodiscard]] model::Result<void> openClient(const model::Id &client);
    /// A new client, opened. Fails with Missing without name or code, Refused if the code is taken.
    [[nodiscard]] model::Result<void> addClient(const QString &name, const QString &code);
    void closeClient();
    [[nodiscard]] bool hasClient() const { return m_record.has_value(); }
    /// The client in hand; only while hasClient(). Where a kitchen is shared it stands in both records, in
    /// whichever of the two it is kept, and a change of it changes both.
    [[nodiscard]] const model::Case &record() const { return *m_record; }
    [[nodiscard]] const model::Findings &findings() const { return m_findings; }
    [[nodiscard]] model::Date today() const { return model::today(); }
    /// The visit that is under way, or nullptr.
    [[nodiscard]] const model::Visit *visit() const;

    /// The client with whom the kitchen is shared, or nullptr.
    [[nodiscard]] const model::Case *otherClient() const { return m_other ? &*m_other : nullptr; }
    /// Why a kitchen that is shared is not at hand, a sentence; empty if it is, or if none is shared.
    [[nodiscard]] QString sharingTrouble() const { return m_sharingTrouble; }
    /// One kitchen for the client in hand and another one; with nobody if `other` is empty. It can be undone.
    /// Fails with Missing if there is no such client, Refused if she shares with somebody else already.
    [[nodiscard]] model::Result<void> shareKitchen(const model::Id &other, const QString &words);
    /// What the plan goes by: of both where the kitchen is shared, else the record and its findings.
    [[nodiscard]] const model::Case &planRecord() const;
    [[nodiscard]] const model::Findings &planFindings() const;
    /// The reasons of the plan that is shown. Fails as WhyLines::of().
    [[nodiscard]] const model::Result<model::WhyLines> &planWhys() const;
    /// Empty without a plan.
    [[nodiscard]] const PlanTold &planTold() const;
    /// What has changed since the plan was worked out, in few words; empty: nothing, or there is no plan.
    [[nodiscard]] const std::vector<std::string> &planChangedSince() const;
    /// What a plan that is begun now rests on; once it is taken, keepPlanBasis() remembers it.
    [[nodiscard]] model::PlanBasis planBasisNow() const;
    void keepPlanBasis(model::PlanBasis basis);
    /// What the two need against each other; empty where no kitchen is shared.
    [[nodiscard]] std::vector<std::string> clashes() const;
    /// The record for papers of the client in hand: labels of a shared plan in a medium that she reads.
    [[nodiscard]] model::Case ownShare() const;

    using Change = std::function<void(model::Case &)>;
    /// Makes a change, saves it, and keeps the way back. `words` say what was done ("rice daily"); `what` is
    /// a code for the audit. A failure changes nothing.
    [[nodiscard]] model::Result<void> edit(const QString &words, const std::string &what,
                                           const Change &change);
    /// The words of what was undone or done again. Fails with Missing when there is nothing.
    [[nodiscard]] model::Result<QString> undo();
    [[nodiscard]] model::Result<QString> redo();
    /// The names by which things are known here: the catalogue's and her own.
    [[nodiscard]] const model::Lexicon &lexicon() const;
    /// Remembers a thing that is described now and whose name was not known, for every client from now on.
    void learn(const model::Thing &thing);
    /// Photographs of the client in hand. Each change is one action, and can be undone while the client is
    /// open.
    [[nodiscard]] std::vector<model::Photo> photos() const;
    [[nodiscard]] model::Result<std::vector<std::uint8_t>> picture(const model::Id &photo) const;
    [[nodiscard]] model::Result<void> addPhoto(const model::Photo &photo,
                                               const std::vector<std::uint8_t> &picture);
    [[nodiscard]] model::Result<void> removePhoto(const model::Photo &photo);
    /// An entry in the audit alone.
    [[nodiscard]] model::Result<void> note(const std::string &what, const QString &detail);

    /// Typing that is not part of the record yet, kept over a crash. Empty text forgets it.
    void keepDraft(const QString &form, const QString &text);
    [[nodiscard]] QString draft(const QString &form) const;

    [[nodiscard]] QString setting(const QString &key) const;
    void keepSetting(const QString &key, const QString &value);

signals:
    /// The client in hand is another, or has changed.
    void changed();

private:
    using Sharing = std::optional<model::SharedKitchen>;
    /// `picture`: while the photograph is not in the records.
    struct PhotoStep {
        model::Photo photo;
        std::vector<std::uint8_t> picture;
        bool added = true;
    };
    struct Step {
        QString words;
        model::Case before{}, after{};
        std::optional<std::pair<Sharing, Sharing>> sharing{}; // before and after, if the step is about it
        std::optional<PhotoStep> photo{};                     // if the step is about it
    };
    [[nodiscard]] model::Result<void> save(const model::Case &after, const std::string &what);
    [[nodiscard]] model::Result<void> saveOne(const model::Case &before, const model::Case &after,
                                              const std::string &what);
    [[nodiscard]] model::Result<model::Case> load(const model::Id &client) const;
    [[nodiscard]] Sharing sharingOf(const model::Id &client) const;
    [[nodiscard]] model::Result<void> setSharing(const Sharing &sharing);
    void takeWithKitchen();
    [[nodiscard]] const model::Together *together() const;
    void addStep(Step step);
    [[nodiscard]] model::Result<QString> move(std::vector<Step> &from, std::vector<Step> &to, bool back);
    [[nodiscard]] model::Result<void> movePhoto(PhotoStep &step, bool back);
    [[nodiscard]] model::Result<void> putPhoto(const model::Photo &photo,
                                               const std::vector<std::uint8_t> &picture);
    [[nodiscard]] model::Result<void> dropPhoto(const model::Photo &photo);
    void take(model::Case record);
    void readOwnThings();
    void rememberBasis(model::PlanBasis basis);
    [[nodiscard]] QString basesKey() const;

    std::optional<model::Store> m_store;
    std::optional<std::vector<model::Case>> m_practice;
    QString m_author;
    std::optional<model::Case> m_record;
    model::Case m_stored;               // the client in hand as saved: without the kitchen of another
    std::optional<model::Case> m_other; // with whom the kitchen is shared, as saved
    Sharing m_sharing;
    QString m_sharingTrouble;
    mutable std::optional<model::Together> m_together; // worked out once a change, as are the reasons
    mutable std::optional<model::Result<model::WhyLines>> m_whys;
    mutable std::optional<PlanTold> m_told;
    mutable std::optional<std::vector<std::string>> m_changedSince;
    std::vector<model::PlanBasis> m_bases; // of the last plans of this kitchen, the newest first
    model::Findings m_findings;
    std::vector<Step> m_done, m_undone;
    std::map<QString, QString> m_drafts;
    std::map<QString, QString> m_settings;
    std::vector<std::pair<model::Photo, std::vector<std::uint8_t>>> m_practicePhotos;
    bool m_keepsOwn = true;
    std::vector<model::CatalogueThing> m_own;
    std::optional<model::Lexicon> m_lexicon; // none: only the catalogue
};

} // namespace app
