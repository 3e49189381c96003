#include "app/photo_reading.h"
#include "model/sentence.h"
#include <QBuffer>
#include <QFile>
#include <QImageReader>

namespace app {

using model::ErrorCode;
using model::fail;
using model::Sentence;

model::Result<std::vector<std::uint8_t>> photoFrom(const QString &path) {
    constexpr qint64 largestFile = 50'000'000;
    constexpr int quality = 80;
    QFile file(path.trimmed());
    if (!file.open(QIODevice::ReadOnly))
        return fail(ErrorCode::Missing, Sentence::tr("The file cannot be read: {1}. Check its name. Kept.",
                                                     {file.errorString().toStdString()}));
    if (file.size() > largestFile)
        return fail(ErrorCode::OutOfRange,
                    Sentence::tr("The file is larger than 50 MB. Take a smaller picture. Kept."));
    QImageReader reader(&file);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    QImage image = reader.read();
    if (image.isNull())
        return fail(ErrorCode::NotUnderstood,
                    Sentence::tr("This file holds no picture that can be read. Take a JPEG or PNG. Kept."));
    if (std::max(image.width(), image.height()) > longestPhotoSide)
        image =
            image.scaled(longestPhotoSide, longestPhotoSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    QImage plain = image.convertToFormat(QImage::Format_RGB888); // without the texts that the file carried
    for (const QString &key : plain.textKeys())
        plain.setText(key, QString());
    QByteArray bytes;
    QBuffer out(&bytes);
    out.open(QIODevice::WriteOnly);
    plain.save(&out, "JPEG", quality);
    return std::vector<std::uint8_t>(bytes.begin(), bytes.end());
}

} // namespace app
