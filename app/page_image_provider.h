#pragma once
#include <QBuffer>
#include <QPdfDocument>
#include <QQuickImageProvider>
#include <memory>

namespace app {

/// Pages of a PDF that lies in memory, as pictures: "image://page/0?3" is its first page. Never a file on
/// disk.
class PageImageProvider : public QQuickImageProvider {
public:
    PageImageProvider() : QQuickImageProvider(QQuickImageProvider::Image) {}

    void load(const QByteArray &pdf);
    void clear();
    [[nodiscard]] int pageCount() const { return m_document ? m_document->pageCount() : 0; }
    /// Address of page `index` (from 0), another one after each load.
    [[nodiscard]] QString source(int index) const;

    QImage requestImage(const QString &id, QSize *size, const QSize &requestedSize) override;

private:
    std::unique_ptr<QBuffer> m_bytes;
    std::unique_ptr<QPdfDocument> m_document;
    int m_loads = 0;
};

} // namespace app
