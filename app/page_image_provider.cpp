#include "app/page_image_provider.h"

namespace app {

void PageImageProvider::load(const QByteArray &pdf) {
    clear();
    m_bytes = std::make_unique<QBuffer>();
    m_bytes->setData(pdf);
    m_bytes->open(QIODevice::ReadOnly);
    m_document = std::make_unique<QPdfDocument>(nullptr);
    m_document->load(m_bytes.get());
    ++m_loads;
}

void PageImageProvider::clear() {
    m_document.reset();
    m_bytes.reset();
}

QString PageImageProvider::source(int index) const {
    return QStringLiteral("image://page/%1?%2").arg(index).arg(m_loads);
}

QImage PageImageProvider::requestImage(const QString &id, QSize *size, const QSize &requestedSize) {
    const int index = id.section(QLatin1Char('?'), 0, 0).toInt();
    if (index < 0 || index >= pageCount())
        return {};
    const QSizeF points = m_document->pagePointSize(index);
    const double wide = requestedSize.width() > 0 ? requestedSize.width() : points.width();
    const QSize pixels(qRound(wide), qRound(wide * points.height() / points.width()));
    QImage page = m_document->render(index, pixels);
    QImage paper(page.size(), QImage::Format_RGB32);
    paper.fill(Qt::white);
    for (int y = 0; y < page.height(); ++y) { // transparent where the paper shows through
        for (int x = 0; x < page.width(); ++x) {
            const QRgb ink = page.pixel(x, y);
            const int alpha = qAlpha(ink);
            const auto mixed = [alpha](int channel) { return (channel * alpha + 255 * (255 - alpha)) / 255; };
            paper.setPixel(x, y, qRgb(mixed(qRed(ink)), mixed(qGreen(ink)), mixed(qBlue(ink))));
        }
    }
    *size = paper.size();
    return paper;
}

} // namespace app
