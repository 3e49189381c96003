#pragma once
#include "app/viewmodels/page_view_model.h"
#include "model/kit.h"

namespace app {

/// The marks that are at hand for this client: features, surfaces, what they bear, price, cautions; own marks
/// too.
class MarkerKitPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;
    void activated(const QString &row) override;
    void moved(const QString &row) override { m_row = row; }
    void command(const QString &name) override;
    [[nodiscard]] QStringList commands() const override { return {QStringLiteral("correct")}; }

private:
    using Write = std::function<model::Result<void>(model::Marker &, const QString &)>;
    [[nodiscard]] model::Marker inHand() const;
    [[nodiscard]] FieldSpec field(FormField shown, const std::function<QString(const model::Marker &)> &read,
                                  const Write &write);
    [[nodiscard]] FieldSpec wordsField(const char *key, const QString &label, const QString &hint,
                                       std::string model::Marker::*member);
    [[nodiscard]] FieldSpec numberField(const char *key, const QString &label, const QString &hint,
                                        double most, double model::Marker::*member);
    [[nodiscard]] FieldSpec factField(const char *key, const QString &label, bool model::Marker::*member);
    [[nodiscard]] std::vector<FieldSpec> fields();
    [[nodiscard]] std::vector<FieldSpec> featureFields();
    [[nodiscard]] std::vector<FieldSpec> useFields();
    void showRows();
    void writeSheet();

    [[nodiscard]] QString subject() const override { return text(m_key); }

    std::string m_key; // of the mark in hand; empty: none
    QString m_row;
};

} // namespace app
