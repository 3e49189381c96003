#include "model/contents_words.h"
#include "model/sentence.h"
#include "model/store_inner.h"

namespace model {

Result<void> Store::addPhoto(const Photo &photo, std::span<const std::uint8_t> picture,
                             const Action &action) {
    if (words::trimmed(photo.description).empty())
        return fail(
            ErrorCode::Missing,
            Sentence::tr(
                "A photograph needs a description: who cannot see it hears that. Say what it shows."));
    if (picture.empty() || picture.size() > largestPhoto)
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("This picture is empty or larger than 2 MB. Take a smaller one."));
    return m_inner->use([&] {
        return m_inner->commit(action, photo.client.text, photo.id.text, [&]() -> Result<void> {
            Statement(m_inner->database,
                      "INSERT INTO photo(id, client, of, description, at, picture) VALUES(?,?,?,?,?,?)",
                      photo.id.text, photo.client.text, photo.of.text, photo.description,
                      photo.at.empty() ? timeStamp() : photo.at, // one that comes back keeps its day

                      ByteView(picture))
                .run();
            return {};
        });
    });
}

Result<std::vector<Photo>> Store::photos(const Id &client) const {
    return m_inner->use([&]() -> Result<std::vector<Photo>> {
        std::vector<Photo> out;
        Statement rows(m_inner->database,
                       "SELECT id, of, description, at FROM photo WHERE client = ? ORDER BY at, id",
                       client.text);
        while (rows.step())
            out.push_back({{rows.text(0)}, client, {rows.text(1)}, rows.text(2), rows.text(3)});
        return out;
    });
}

Result<std::vector<std::uint8_t>> Store::picture(const Id &photo) const {
    return m_inner->use([&]() -> Result<std::vector<std::uint8_t>> {
        Statement row(m_inner->database, "SELECT picture FROM photo WHERE id = ?", photo.text);
        if (!row.step())
            return fail(ErrorCode::Missing, Sentence::tr("This photograph is not in the records any more."));
        const auto bytes = row.blob(0);
        return std::vector<std::uint8_t>(bytes.begin(), bytes.end());
    });
}

Result<void> Store::removePhoto(const Photo &photo, const Action &action) {
    return m_inner->use([&] {
        return m_inner->commit(action, photo.client.text, photo.id.text, [&]() -> Result<void> {
            Statement(m_inner->database, "DELETE FROM photo WHERE id = ?", photo.id.text).run();
            if (m_inner->database.changes() == 0)
                return fail(ErrorCode::Missing,
                            Sentence::tr("This photograph is not in the records any more."));
            return {};
        });
    });
}

} // namespace model
