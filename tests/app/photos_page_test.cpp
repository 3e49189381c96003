#include "app/pages/photos_page.h"
#include "app/photo_reading.h"
#include "model/store.h"
#include <QImage>
#include <QTemporaryDir>
#include <gmock/gmock.h>

namespace app {
namespace {

using testing::HasSubstr;

QString pictureIn(const QTemporaryDir &folder, int width, int height) {
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    image.setText(QStringLiteral("Comment"), QStringLiteral("taken at the home of Quilla"));
    const QString path = folder.filePath(QStringLiteral("shelf.png"));
    EXPECT_TRUE(image.save(path));
    return path;
}

TEST(PhotoReading, scalesDownAndKeepsNothingButThePicture) {
    const QTemporaryDir folder;
    const auto bytes = photoFrom(pictureIn(folder, 4000, 3000));
    ASSERT_TRUE(bytes);
    const QByteArray data(reinterpret_cast<const char *>(bytes->data()),
                          static_cast<qsizetype>(bytes->size()));
    const QImage read = QImage::fromData(data, "JPEG");
    EXPECT_EQ(read.size(), QSize(1600, 1200));
    EXPECT_FALSE(data.contains("Quilla"));
    EXPECT_EQ(QImage::fromData(
                  QByteArray(reinterpret_cast<const char *>(photoFrom(pictureIn(folder, 300, 200))->data()),
                             static_cast<qsizetype>(photoFrom(pictureIn(folder, 300, 200))->size())))
                  .size(),
              QSize(300, 200))
        << "a small one stays as it is";
}

TEST(PhotoReading, refusesWhatIsNoPicture) {
    const QTemporaryDir folder;
    QFile file(folder.filePath("note.jpg"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("no picture");
    file.close();
    EXPECT_EQ(photoFrom(file.fileName()).error().code, model::ErrorCode::NotUnderstood);
    EXPECT_EQ(photoFrom("/nowhere.jpg").error().code, model::ErrorCode::Missing);
}

TEST(Photos, needWordsAndAreShownKeptAndRemoved) {
    const QTemporaryDir folder;
    Session session;
    session.openPractice();
    ASSERT_TRUE(session.openClient(session.caseload()->front().id));
    ShellViewModel shell;
    PhotosPage page(session, shell);
    page.refresh();
    page.edit("file", pictureIn(folder, 300, 200));
    page.act("add");
    EXPECT_TRUE(session.photos().empty());
    EXPECT_THAT(shell.message().toStdString(), HasSubstr("Say what is to be seen first"));
    page.edit("words", "Tins in two rows");
    page.act("add");
    ASSERT_EQ(session.photos().size(), 1U);
    EXPECT_THAT(shell.message().toStdString(), HasSubstr("Delete the file outside"));
    EXPECT_TRUE(page.picture().startsWith("data:image/jpeg;base64,"));
    EXPECT_EQ(page.pictureWords(), "Tins in two rows");
    page.act("remove");
    EXPECT_TRUE(session.photos().empty());
    EXPECT_EQ(page.picture(), "");
}

TEST(Photos, areUndoneAndDoneAgainWithTheRest) {
    const QTemporaryDir folder;
    auto made = model::Store::create(folder.filePath("store").toStdString(), "five words that stand together",
                                     "Ada Rowan", model::KeyCost::cheapest());
    ASSERT_TRUE(made);
    Session session;
    session.openStore(std::move(made->store), "Ada Rowan");
    ASSERT_TRUE(session.addClient("Invented Person", "P1"));
    ShellViewModel shell;
    PhotosPage page(session, shell);
    page.refresh();
    page.edit("words", "Tins in two rows");
    page.edit("file", pictureIn(folder, 300, 200));
    page.act("add");
    ASSERT_EQ(session.photos().size(), 1U);
    const auto taken = session.photos().front();
    const auto bytes = session.picture(taken.id);
    ASSERT_TRUE(session.edit("contact", "test", [](model::Case &r) { r.client.contact = "at noon"; }));
    EXPECT_EQ(session.undo(), "contact");
    EXPECT_EQ(session.undo(), "photograph, Tins in two rows");
    EXPECT_TRUE(session.photos().empty());
    EXPECT_EQ(page.rows()->rows().size(), 0U) << "the page shows it at once";
    ASSERT_TRUE(session.redo());
    ASSERT_EQ(session.photos().size(), 1U);
    EXPECT_EQ(session.picture(taken.id), bytes);
    page.moved(QString::fromStdString(taken.id.text));
    page.act("remove");
    EXPECT_TRUE(session.photos().empty());
    EXPECT_EQ(session.undo(), "removed photograph, Tins in two rows");
    ASSERT_EQ(session.photos().size(), 1U);
    EXPECT_EQ(session.picture(taken.id), bytes);
    EXPECT_EQ(session.redo(), "removed photograph, Tins in two rows");
    EXPECT_TRUE(session.photos().empty());
    session.closeClient();
    EXPECT_FALSE(session.undo());
}

} // namespace
} // namespace app
