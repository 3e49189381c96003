#include "app/viewmodels/entry_view_model.h"
#include "app/pages/background.h"
#include <QRandomGenerator>
#include <QRegularExpression>
#include <memory>

namespace app {

using model::ErrorCode;
using model::Result;
using model::Store;

namespace {

const QString authorSetting = QStringLiteral("author");

/// UTF-8 of a secret, overwritten when the last owner lets go.
std::shared_ptr<std::string> secretOf(const QString &typed) {
    return {new std::string(typed.toStdString()), [](std::string *secret) {
                volatile char *bytes = secret->data();
                for (std::size_t i = 0; i < secret->size(); ++i)
                    bytes[i] = 0;
                delete secret;
            }};
}

} // namespace

EntryViewModel::EntryViewModel(Session &session, ShellViewModel &shell, std::filesystem::path folder,
                               model::KeyCost cost)
    : m_session(session), m_shell(shell), m_folder(std::move(folder)), m_cost(cost),
      m_stage(Store::existsIn(m_folder) ? QStringLiteral("unlock") : QStringLiteral("setup")) {}

QStringList EntryViewModel::groups() const {
    return QString::fromStdString(m_code).split(QRegularExpression(QStringLiteral("[\\s-]+")),
                                                Qt::SkipEmptyParts);
}

void EntryViewModel::fail(const QString &sentence, const QString &at) {
    m_busy = false;
    m_error = sentence;
    m_errorAt = at;
    emit changed();
    if (at.isEmpty())
        m_shell.say(sentence);
    else
        emit refused(at);
}

void EntryViewModel::unlock(const QString &secret) {
    if (m_busy)
        return;
    if (secret.isEmpty()) {
        fail(tr("Type the passphrase, or the recovery code, first."));
        return;
    }
    m_busy = true;
    m_error.clear();
    emit changed();
    m_shell.say(tr("Unlocking."));
    inBackground(
        this,
        [folder = m_folder, held = secretOf(secret), cost = m_cost] {
            return std::make_shared<Result<Store>>(Store::open(folder, *held, "unlock", cost));
        },
        [this](const std::shared_ptr<Result<Store>> &opened) {
            emit wipe();
            if (!*opened) {
                m_keyFileDamaged = opened->error().code == ErrorCode::DamagedKeyFile;
                fail(QString::fromStdString(opened->error().sentence));
                return;
            }
            Store store = std::move(**opened);
            const auto author = store.setting(authorSetting.toStdString());
            entered(std::move(store), author && *author ? QString::fromStdString(**author) : QString());
        });
}

void EntryViewModel::practice() {
    if (m_busy)
        return;
    emit wipe();
    m_session.openPractice();
    m_shell.goTo(QStringLiteral("caseload"));
}

void EntryViewModel::create(const QString &author, const QString &passphrase, const QString &again) {
    if (m_busy)
        return;
    if (author.trimmed().isEmpty()) {
        fail(tr("Your name is needed: it stands on the papers and beside every record."),
             QStringLiteral("author"));
        return;
    }
    if (const auto good = model::checkPassphrase(passphrase.toStdString()); !good) {
        fail(QString::fromStdString(good.error().sentence), QStringLiteral("first"));
        return;
    }
    if (passphrase != again) {
        fail(tr("The two passphrases differ. Type the second again."), QStringLiteral("second"));
        return;
    }
    m_busy = true;
    m_error.clear();
    m_author = author.trimmed();
    emit changed();
    m_shell.say(tr("Making the encrypted records."));
    inBackground(
        this,
        [folder = m_folder, held = secretOf(passphrase), name = m_author.toStdString(), cost = m_cost] {
            return std::make_shared<Result<Store::Made>>(Store::create(folder, *held, name, cost));
        },
        [this](const std::shared_ptr<Result<Store::Made>> &made) {
            if (!*made) {
                fail(QString::fromStdString(made->error().sentence));
                return;
            }
            emit wipe();
            m_made.emplace(std::move((*made)->store));
            m_code = (*made)->recoveryCode;
            m_askedGroup =
                static_cast<int>(QRandomGenerator::global()->bounded(static_cast<int>(groups().size()))) + 1;
            (void)m_made->saveSetting(authorSetting.toStdString(), m_author.toStdString());
            m_busy = false;
            m_stage = QStringLiteral("code");
            emit changed();
            m_shell.say(tr("Records made. Write down the recovery code, %1 groups. It is shown only now.")
                            .arg(groups().size()));
        });
}

void EntryViewModel::confirm(const QString &typedGroup) {
    if (!model::recoveryGroupMatches(m_code, m_askedGroup, typedGroup.toStdString())) {
        fail(tr("That is not group %1. Read it again.").arg(m_askedGroup));
        return;
    }
    std::fill(m_code.begin(), m_code.end(), ' ');
    m_code.clear();
    Store store = std::move(*m_made);
    m_made.reset();
    entered(std::move(store), m_author);
}

void EntryViewModel::restoreKeyFile() {
    const auto restored = Store::restoreKeyFile(m_folder);
    m_keyFileDamaged = false;
    if (restored) {
        m_error.clear();
        emit changed();
        m_shell.say(tr("The copy of the key file is in its place. Type the passphrase again."));
    } else {
        fail(QString::fromStdString(restored.error().sentence));
    }
}

void EntryViewModel::entered(Store store, const QString &author) {
    m_busy = false;
    m_error.clear();
    m_session.openStore(std::move(store), author);
    m_shell.goTo(QStringLiteral("unlocked")); // whose heading says that it worked
    for (const auto &notice : m_session.store()->notices())
        m_shell.sayAfterPage(QString::fromStdString(notice));
}

} // namespace app
