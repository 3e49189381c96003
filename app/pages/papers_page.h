#pragma once
#include "app/page_image_provider.h"
#include "app/viewmodels/page_view_model.h"
#include "reports/papers.h"
#include <atomic>
#include <memory>

namespace app {

/// The papers of a client: made, looked at, read, and written into a folder.
class PapersPage : public PageViewModel {
    Q_OBJECT

public:
    PapersPage(Session &session, ShellViewModel &shell, PageImageProvider &pictures)
        : PageViewModel(session, shell), m_pictures(pictures) {}
    ~PapersPage() override;
    void refresh() override;
    void act(const QString &key) override;
    void moved(const QString &row) override;
    void activated(const QString &row) override { moved(row); }
    void stopWork() override { *m_stop = true; }

private:
    void make();
    void take(model::Result<std::vector<reports::Paper>> made);
    void write();
    void show(const reports::Paper &paper);
    void showPage(int by);
    [[nodiscard]] QString noPapersWords() const;
    [[nodiscard]] QString writtenKey() const;
    [[nodiscard]] const reports::Paper *paperInHand() const;

    PageImageProvider &m_pictures;
    std::vector<reports::Paper> m_papers;
    QString m_folder, m_row;
    int m_page = 0;
    bool m_working = false;
    std::shared_ptr<std::atomic<bool>> m_stop = std::make_shared<std::atomic<bool>>(false);
};

} // namespace app
