#include "app/pages/photos_page.h"
#include "app/pages/entries.h"
#include "app/photo_reading.h"
#include "model/planning.h"
#include <algorithm>

namespace app {

using model::Case;
using model::Id;
using model::Photo;
using model::Result;

std::vector<std::pair<QString, Id>> PhotosPage::parts() const {
    std::vector<std::pair<QString, Id>> out{{tr("The whole kitchen"), record().client.id}};
    for (const auto &unit : record().units) {
        out.emplace_back(text(unit.name), unit.id);
        for (const auto &place : record().places)
            if (place.unit == unit.id)
                out.emplace_back(text(model::placeWords(record(), place.id)), place.id);
    }
    return out;
}

const Photo *PhotosPage::photoInHand() const {
    const auto found =
        std::ranges::find(m_photos, m_row, [](const Photo &photo) { return text(photo.id.text); });
    return found == m_photos.end() ? nullptr : &*found;
}

void PhotosPage::refresh() {
    m_photos = m_session.photos();
    const auto all = parts();
    QStringList names;
    for (const auto &[name, id] : all)
        names << name;
    if (!names.contains(m_part))
        m_part = names.front();
    m_kicker = tr(
        "Kept in the records, encrypted. The file that you take it from stays where it is: delete it there.");
    const auto typed = [](QString &into) {
        return [&into](Case &, const QString &value) -> Result<void> {
            into = value.trimmed();
            return {};
        };
    };
    setFields({{{.key = "part", .kind = FieldKind::Choice, .label = tr("It shows"), .choices = names},
                [this] { return m_part; },
                typed(m_part)},
               {{.key = "words",
                 .label = tr("What is to be seen, in words"),
                 .hint = tr("Needed: who cannot see it hears this")},
                [this] { return m_words; },
                typed(m_words)},
               {{.key = "file",
                 .kind = FieldKind::File,
                 .label = tr("Picture file"),
                 .hint = tr("JPEG or PNG, for example /media/stick/shelf.jpg"),
                 .choices = {QStringLiteral("jpg"), QStringLiteral("jpeg"), QStringLiteral("png")}},
                [this] { return m_file; },
                typed(m_file)}});
    std::vector<ActionRow> actions{{.key = "add", .title = tr("Take it in"), .primary = true}};
    if (photoInHand())
        actions.push_back({.key = "remove", .title = tr("Remove the photograph in hand")});
    m_actions.setRows(std::move(actions));
    std::vector<ListRow> rows;
    for (const auto &photo : m_photos) {
        const auto part = std::ranges::find(all, photo.of, [](const auto &p) { return p.second; });
        const auto day = model::parseDate(photo.at.substr(0, 10));
        rows.push_back({.key = text(photo.id.text),
                        .title = text(photo.description),
                        .facts = (part == all.end() ? tr("of a part that is gone") : part->first) +
                                 (day ? QStringLiteral(", ") + shown(std::optional(*day)) : QString())});
    }
    m_rowsLabel = counted(rows.size(), tr("1 photograph"), tr("%1 photographs"));
    m_rowsEmpty = tr("No photograph yet. Take one only with consent.");
    m_rows.setRows(std::move(rows));
    showPhoto();
    emit refreshed();
}

/// The picture goes to the screen from memory.
void PhotosPage::showPhoto() {
    const Photo *photo = photoInHand();
    const auto picture = photo ? m_session.picture(photo->id) : Result<std::vector<std::uint8_t>>();
    if (!photo || !picture) {
        setPicture({}, {});
        return;
    }
    const QByteArray bytes(reinterpret_cast<const char *>(picture->data()),
                           static_cast<qsizetype>(picture->size()));
    setPicture(QStringLiteral("data:image/jpeg;base64,") + QString::fromLatin1(bytes.toBase64()),
               text(photo->description));
}

void PhotosPage::moved(const QString &row) {
    if (row == m_row)
        return;
    m_row = row;
    refresh();
}

void PhotosPage::act(const QString &key) {
    if (key == QLatin1String("add"))
        add();
    else if (key == QLatin1String("remove") && photoInHand())
        remove();
}

void PhotosPage::add() {
    if (m_words.isEmpty()) {
        say(tr("Say what is to be seen first: a photograph without words is nothing to who cannot see it."));
        emit focusField(QStringLiteral("words"));
        return;
    }
    const auto picture = photoFrom(m_file);
    if (!picture) {
        say(picture.error());
        emit focusField(QStringLiteral("file"));
        return;
    }
    const auto all = parts();
    const auto part = std::ranges::find(all, m_part, [](const auto &p) { return p.first; });
    Photo photo{model::newId(), record().client.id, part->second, m_words.toStdString(), {}};
    if (const auto added = m_session.addPhoto(photo, *picture); !added) {
        say(added.error());
        return;
    }
    m_row = text(photo.id.text);
    m_words.clear();
    m_file.clear();
    refresh();
    say(tr("Photograph taken in, %1 kilobytes. Delete the file outside.").arg(picture->size() / 1000 + 1));
}

void PhotosPage::remove() {
    const Photo photo = *photoInHand();
    if (const auto removed = m_session.removePhoto(photo); !removed) {
        say(removed.error());
        return;
    }
    m_row.clear();
    refresh();
    say(tr("Removed: %1. Undo brings it back while this client is open; then it is gone for good.")
            .arg(text(photo.description)));
    emit focusField(QStringLiteral("words"));
}

} // namespace app
