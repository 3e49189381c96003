#include "app/session.h"
#include "model/sentence.h"
#include <algorithm>

namespace app {

using model::ErrorCode;
using model::fail;
using model::Photo;
using model::Result;
using model::Sentence;

std::vector<Photo> Session::photos() const {
    if (m_store)
        return m_store->photos(m_record->client.id).value_or(std::vector<Photo>());
    std::vector<Photo> out;
    for (const auto &[photo, picture] : m_practicePhotos)
        if (photo.client == m_record->client.id)
            out.push_back(photo);
    return out;
}

Result<std::vector<std::uint8_t>> Session::picture(const model::Id &photo) const {
    if (m_store)
        return m_store->picture(photo);
    const auto found =
        std::ranges::find(m_practicePhotos, photo, [](const auto &kept) { return kept.first.id; });
    if (found == m_practicePhotos.end())
        return fail(ErrorCode::Missing, Sentence::tr("This photograph is not there any more."));
    return found->second;
}

Result<void> Session::addPhoto(const Photo &photo, const std::vector<std::uint8_t> &picture) {
    auto added = putPhoto(photo, picture);
    if (added)
        addStep({.words = tr("photograph, %1").arg(QString::fromStdString(photo.description)),
                 .photo = PhotoStep{.photo = photo, .picture = {}, .added = true}});
    return added;
}

Result<void> Session::removePhoto(const Photo &photo) {
    auto bytes = picture(photo.id);
    if (!bytes)
        return tl::unexpected(bytes.error());
    auto removed = dropPhoto(photo);
    if (removed)
        addStep({.words = tr("removed photograph, %1").arg(QString::fromStdString(photo.description)),
                 .photo = PhotoStep{.photo = photo, .picture = std::move(*bytes), .added = false}});
    return removed;
}

Result<void> Session::movePhoto(PhotoStep &step, bool back) {
    if (step.added != back) {
        auto put = putPhoto(step.photo, step.picture);
        if (!put)
            return put;
        step.picture.clear();
    } else {
        auto bytes = picture(step.photo.id);
        if (!bytes)
            return tl::unexpected(bytes.error());
        if (auto dropped = dropPhoto(step.photo); !dropped)
            return dropped;
        step.picture = std::move(*bytes);
    }
    emit changed();
    return {};
}

Result<void> Session::putPhoto(const Photo &photo, const std::vector<std::uint8_t> &picture) {
    const model::Id visited = visit() ? visit()->id : model::Id{};
    if (m_store)
        return m_store->addPhoto(photo, picture, {m_author.toStdString(), visited, "photo.added"});
    m_practicePhotos.emplace_back(photo, picture);
    m_practicePhotos.back().first.at = model::isoDate(today());
    return {};
}

Result<void> Session::dropPhoto(const Photo &photo) {
    const model::Id visited = visit() ? visit()->id : model::Id{};
    if (m_store)
        return m_store->removePhoto(photo, {m_author.toStdString(), visited, "photo.removed"});
    std::erase_if(m_practicePhotos, [&](const auto &kept) { return kept.first.id == photo.id; });
    return {};
}

} // namespace app
