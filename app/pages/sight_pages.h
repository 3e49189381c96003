#pragma once
#include "app/viewmodels/page_view_model.h"
#include "model/reading_sentences.h"
#include "model/reading_trial.h"

namespace app {

/// The reading trial: which sheet, at which distance, and how each line was read.
class ReadingPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void edit(const QString &key, const QString &value) override;
    void act(const QString &key) override;
    [[nodiscard]] QStringList commands() const override { return {QStringLiteral("readBack")}; }
    void command(const QString &name) override;

private:
    void speakNext();
    [[nodiscard]] FieldSpec versionField();
    [[nodiscard]] FieldSpec distanceField();
    [[nodiscard]] FieldSpec lineField(int line);
    [[nodiscard]] const model::Measurement *today() const;
    [[nodiscard]] model::Result<void> writeLine(model::Case &record, int line, const QString &typed) const;
    void writeSheet();

    model::ReadingVersion m_version = model::ReadingVersion::A;
    QString m_distance = QStringLiteral("40 cm");
    bool m_reminded = false; // of the headphones
};

/// Whether the label of each thing can be read where it stands.
class LegiblePage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void edit(const QString &key, const QString &value) override;
    void moved(const QString &row) override;

private:
    void showReason();

    QString m_colours, m_row;
};

} // namespace app
