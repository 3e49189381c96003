#pragma once
#include "app/viewmodels/page_view_model.h"

namespace app {

/// Every client by name or code, what is due, and a new one.
class CaseloadPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void edit(const QString &key, const QString &value) override;
    void act(const QString &key) override;
    void returned(const QString &key) override;
    void activated(const QString &row) override;
    void moved(const QString &row) override { m_row = row; }
    void command(const QString &name) override;
    [[nodiscard]] QString whyNotNow(const QString &command) const override;
    [[nodiscard]] QStringList commands() const override { return {QStringLiteral("startVisit")}; }
    [[nodiscard]] QString fieldAboveList() const override { return QStringLiteral("find"); }

private:
    void open(const QString &row);

    QString m_filter, m_name, m_code, m_row;
    bool m_adding = false;
};

} // namespace app
