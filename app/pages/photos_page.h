#pragma once
#include "app/viewmodels/page_view_model.h"
#include "model/photo.h"

namespace app {

/// Photographs of the kitchen: each with a description, kept in the records alone.
class PhotosPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;
    void moved(const QString &row) override;
    void activated(const QString &row) override { moved(row); }

private:
    [[nodiscard]] std::vector<std::pair<QString, model::Id>> parts() const;
    [[nodiscard]] const model::Photo *photoInHand() const;
    void add();
    void remove();
    void showPhoto();

    std::vector<model::Photo> m_photos;
    QString m_words, m_file, m_part, m_row;
};

} // namespace app
