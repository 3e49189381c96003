#include "app/viewmodels/folder_listing.h"
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <gmock/gmock.h>

namespace app {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

class Folder : public testing::Test {
protected:
    Folder() {
        QDir(m_dir.path()).mkdir("Pictures");
        put("note.txt", "one");
        put("Shelf.JPG", QByteArray(120'400, 'x'));
        put("drawer.png", QByteArray(2'340'000, 'x'));
        put(".hidden.jpg", "x");
        m_listing.setKinds({"jpg", "png"});
    }
    void put(const QString &name, const QByteArray &bytes) {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    [[nodiscard]] QString path(const QString &name) const { return m_dir.filePath(name); }
    [[nodiscard]] std::vector<std::string> titles() {
        std::vector<std::string> all;
        for (const ListRow &row : m_listing.rows()->rows())
            all.push_back(row.title.toStdString());
        return all;
    }

    QTemporaryDir m_dir;
    FolderListing m_listing;
};

TEST_F(Folder, showsTheWayUpThenFoldersThenFilesOfTheKinds) {
    m_listing.start(m_dir.path());
    EXPECT_THAT(titles(), ElementsAre(HasSubstr("Up, to "), "Pictures", "drawer.png", "Shelf.JPG"));
    EXPECT_THAT(m_listing.words().toStdString(), HasSubstr(": 1 folder, 2 files."));
    const auto &rows = m_listing.rows()->rows();
    EXPECT_EQ(rows[1].facts, "folder");
    EXPECT_THAT(rows[2].facts.toStdString(), HasSubstr("2.3 megabytes, "));
    EXPECT_THAT(rows[3].facts.toStdString(), HasSubstr("120 kilobytes, "));
}

TEST_F(Folder, countsInNamesAndLooksAtNoCapitals) {
    put("shelf 10.jpg", "x");
    put("Shelf 9.jpg", "x");
    put("apples.png", "x");
    m_listing.start(m_dir.path());
    EXPECT_THAT(titles(), ElementsAre(HasSubstr("Up, to "), "Pictures", "apples.png", "drawer.png",
                                      "Shelf 9.jpg", "shelf 10.jpg", "Shelf.JPG"));
}

TEST_F(Folder, showsEveryFileWhereNoKindIsAskedFor) {
    m_listing.setKinds({});
    m_listing.start(m_dir.path());
    EXPECT_THAT(m_listing.words().toStdString(), HasSubstr("3 files."));
}

TEST_F(Folder, goesDownAndUpAgainToWhereItCameFrom) {
    m_listing.start(m_dir.path());
    EXPECT_EQ(m_listing.choose(path("Pictures")), "");
    EXPECT_EQ(m_listing.folder(), path("Pictures"));
    EXPECT_THAT(m_listing.words().toStdString(), HasSubstr("no file of the kinds jpg, png"));
    EXPECT_EQ(m_listing.startRow(), m_dir.path()) << "the way up, as there is nothing else";
    EXPECT_EQ(m_listing.choose(m_dir.path()), "");
    EXPECT_EQ(m_listing.startRow(), path("Pictures"));
}

TEST_F(Folder, givesThePathOfAFile) {
    m_listing.start(m_dir.path());
    EXPECT_EQ(m_listing.choose(path("drawer.png")), path("drawer.png"));
}

TEST_F(Folder, beginsWhereThePathThatWasTypedLies) {
    m_listing.start(path("drawer.png"));
    EXPECT_EQ(m_listing.folder(), m_dir.path());
    EXPECT_EQ(m_listing.startRow(), path("drawer.png"));
}

TEST_F(Folder, beginsAtHomeAndSaysWhyWhereTheFolderIsGone) {
    m_listing.start(path("Nowhere/shelf.jpg"));
    EXPECT_EQ(m_listing.folder(), QDir(QDir::homePath()).absolutePath());
    EXPECT_EQ(m_listing.error(), "The folder Nowhere is gone.");
    m_listing.start({});
    EXPECT_EQ(m_listing.error(), "");
}

TEST_F(Folder, saysThatAFileIsGoneAndReadsTheListAnew) {
    m_listing.start(m_dir.path());
    ASSERT_TRUE(QFile::remove(path("drawer.png")));
    EXPECT_EQ(m_listing.choose(path("drawer.png")), "");
    EXPECT_EQ(m_listing.error(), "drawer.png is gone. The list is read anew.");
    EXPECT_THAT(titles(), ElementsAre(HasSubstr("Up, to "), "Pictures", "Shelf.JPG"));
}

TEST_F(Folder, staysWhereItIsIfAFolderIsGone) {
    m_listing.start(m_dir.path());
    ASSERT_TRUE(QDir(m_dir.path()).rmdir("Pictures"));
    EXPECT_EQ(m_listing.choose(path("Pictures")), "");
    EXPECT_EQ(m_listing.folder(), m_dir.path());
    EXPECT_EQ(m_listing.error(), "Pictures is gone. The list is read anew.");
}

TEST_F(Folder, choosesAFolder) {
    m_listing.setFoldersOnly(true);
    QDir(m_dir.path()).mkdir("Papers");
    m_listing.start(m_dir.path());
    EXPECT_THAT(titles(),
                ElementsAre(HasSubstr("Take this folder, "), HasSubstr("Up, to "), "Papers", "Pictures"));
    EXPECT_THAT(m_listing.words().toStdString(), testing::EndsWith(": 2 folders."));
    EXPECT_EQ(m_listing.choose(path("Papers")), "");
    EXPECT_THAT(titles(), ElementsAre("Take this folder, Papers", HasSubstr("Up, to ")));
    EXPECT_EQ(m_listing.choose(m_listing.startRow()), path("Papers"));
}

TEST_F(Folder, takesNoFolderThatIsGone) {
    m_listing.setFoldersOnly(true);
    m_listing.start(path("Pictures"));
    ASSERT_TRUE(QDir(m_dir.path()).rmdir("Pictures"));
    EXPECT_EQ(m_listing.choose(m_listing.startRow()), "");
    EXPECT_EQ(m_listing.error(), "Pictures is gone. The list is read anew.");
}

} // namespace
} // namespace app
