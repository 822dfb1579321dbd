// SPDX-License-Identifier: GPL-3.0-or-later
// A prescription painted in a mirrored window must read as in any other: -5.00 painted as 5.00- is a wrong
// pair.
#include "app/desk/models/pairs_model.hpp"
#include "app/desk/models/plane_model.hpp"
#include "app/desk/theme.hpp"
#include "app/desk/words.hpp"
#include "app/session/powers_ltr.hpp"
#include "app/session/wording.hpp"
#include "tests/desk/camp_folder.hpp"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>

using namespace quarterstep;
namespace utf = boost::unit_test;

namespace
{
/// The words alone, painted as in a window of that direction, cut to what is inked.
QImage painted(const QString& text, Qt::LayoutDirection direction)
{
    QImage image(900, 60, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setLayoutDirection(direction);
    painter.setPen(Qt::black);
    painter.drawText(image.rect(), static_cast<int>(Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter),
                     text);
    painter.end();
    int first = image.width(), last = -1;
    for (int x = 0; x < image.width(); ++x)
        for (int y = 0; y < image.height(); ++y)
            if (image.pixel(x, y) != qRgb(255, 255, 255)) {
                first = std::min(first, x);
                last = std::max(last, x);
            }
    BOOST_TEST_REQUIRE(last >= first);
    return image.copy(first, 0, last - first + 1, image.height());
}

bool sameBothWays(const QString& text)
{
    return painted(text, Qt::LeftToRight) == painted(text, Qt::RightToLeft);
}
} // namespace

BOOST_AUTO_TEST_SUITE(direction)

BOOST_AUTO_TEST_CASE(the_test_sees_the_fault_it_looks_for, *utf::label("PROP"))
{
    BOOST_TEST(!sameBothWays(QStringLiteral("-1.25 -0.50 x 90")));
    BOOST_TEST(!sameBothWays(QStringLiteral("-5.00")));
    BOOST_TEST(!sameBothWays(
        QStringLiteral("R %1 L %2").arg(ltr(QStringLiteral("-3.00")), ltr(QStringLiteral("-4.00")))));
}

BOOST_AUTO_TEST_CASE(powers_and_line_names_are_painted_alike_in_both_directions, *utf::label("PROP"))
{
    for (const auto* text : {"-5.00", "-1.25 -0.50 x 90", "+2.00", "N+200-62M-BK", "0.70 in", "6/9"})
        BOOST_TEST(sameBothWays(ltr(QLatin1String(text))), text);
}

BOOST_AUTO_TEST_CASE(cells_with_powers_and_prism_are_painted_alike_in_both_directions, *utf::label("PROP"))
{
    SmallAnswer small;
    PairsModel model;
    model.show(small.answer, small.stock);
    BOOST_TEST_REQUIRE(model.rowCount() > 0);
    for (int row = 0; row < model.rowCount(); ++row)
        for (const auto column : {PairsModel::powerColumn, PairsModel::prismColumn})
            BOOST_TEST(sameBothWays(model.index(row, column).data().toString()));
    PlaneModel plane;
    plane.show(planeOfStock(small.stock));
    for (int row = 0; row < plane.rowCount(); ++row)
        BOOST_TEST(sameBothWays(plane.index(row, PlaneModel::meanColumn).data().toString()));
}

BOOST_AUTO_TEST_CASE(powers_in_a_sentence_from_right_to_left_stay_as_they_are_written, *utf::label("DER"))
{
    const auto arabic = QString::fromUtf8("\u0627\u0643\u062A\u0628 %1\u060C \u0645\u062B\u0644");
    for (const auto* text : {"-1.50", "+0.75 x 90", "-1.25 -0.50 x 90", "2026-11-27", "-0.50", "3 x 4"})
        BOOST_TEST(powersLtr(arabic.arg(QLatin1String(text))).toStdString() ==
                       arabic.arg(ltr(QLatin1String(text))).toStdString(),
                   text);
    for (const auto& text : {ltr(QStringLiteral("-1.25 -0.50 x 90")), QStringLiteral("N+200-60M-BK"),
                             QStringLiteral("0.75"), QStringLiteral("150"), QStringLiteral("6/12")})
        BOOST_TEST(powersLtr(arabic.arg(text)).toStdString() == arabic.arg(text).toStdString());
    BOOST_TEST(powersLtr(arabic.arg(QStringLiteral("+2.00. "))).toStdString() ==
               arabic.arg(ltr(QStringLiteral("+2.00")) + QStringLiteral(". ")).toStdString());
    const auto english = QStringLiteral("cylinder +0.75 has no axis; write +0.75 x 90");
    BOOST_TEST(powersLtr(english).toStdString() == english.toStdString());
}

/// How far from the right edge each line of a label begins, in pixels.
std::vector<int> beginnings(QLabel& label)
{
    const auto image = label.grab().toImage();
    const int height = label.fontMetrics().lineSpacing();
    std::vector<int> begins;
    for (int top = 0; top + height <= image.height(); top += height) {
        int last = -1;
        for (int x = 0; x < image.width(); ++x)
            for (int y = top; y < top + height; ++y)
                if (qGray(image.pixel(x, y)) < 128)
                    last = x;
        begins.push_back(image.width() - 1 - last);
    }
    return begins;
}

BOOST_AUTO_TEST_CASE(every_line_of_words_begins_at_the_right, *utf::label("REG"))
{
    applyTheme(*qApp, Theme::light);
    QApplication::setLayoutDirection(Qt::RightToLeft);
    const auto word = QString::fromUtf8("\u0627\u0644\u0646\u0638\u0627\u0631\u0629 ");
    for (const auto& before :
         {QString(), QStringLiteral("N+125-60M-BK "), ltr(QStringLiteral("N+125-60M-BK")) + QLatin1Char(' '),
          word.repeated(3) + ltr(QStringLiteral("-1.25 -0.50 x 90")) + QLatin1Char(' ')}) {
        QLabel label(before + word.repeated(9));
        label.setWordWrap(true);
        label.setStyleSheet(QStringLiteral("color:black;background:white"));
        for (const int width : {150, 163, 181}) {
            label.resize(width, label.heightForWidth(width));
            const auto begins = beginnings(label);
            BOOST_TEST(begins.size() > 2U);
            for (const int begin : begins) // what a letter leaves free beside it; a space is wider
                BOOST_TEST(begin <= 3, width << ": a line begins at " << begin);
        }
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

BOOST_AUTO_TEST_CASE(a_label_cuts_no_sign_above_a_letter, *utf::label("REG"))
{
    QApplication::setLayoutDirection(Qt::RightToLeft);
    applyTheme(*qApp, Theme::light, 200);
    for (const auto* role : {"", "heading", "banner"}) {
        QLabel label(QString::fromUtf8("\u0623\u064A"));
        label.setProperty("role", QLatin1String(role));
        label.setStyleSheet(QStringLiteral("color:black;background:white"));
        label.show();
        const auto image = label.grab().toImage();
        int inked = 0;
        for (int x = 0; x < image.width(); ++x)
            inked += qGray(image.pixel(x, 0)) < 250 ? 1 : 0;
        BOOST_TEST(inked == 0, "'" << role << "' reaches to the edge: " << label.contentsMargins().top()
                                   << " of " << label.height());
    }
    applyTheme(*qApp, Theme::light);
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

BOOST_AUTO_TEST_CASE(the_title_of_the_first_page_is_whole_in_hindi, *utf::label("REG"))
{
    applyTheme(*qApp, Theme::light, 200);
    QLabel label(QString::fromUtf8("\u0915\u094C\u0928"));
    label.setProperty("role", QStringLiteral("banner"));
    label.setStyleSheet(QStringLiteral("color:black;background:white"));
    label.show();
    const auto image = label.grab().toImage();
    int inked = 0;
    for (int x = 0; x < image.width(); ++x)
        inked += qGray(image.pixel(x, 0)) < 250 ? 1 : 0;
    BOOST_TEST(inked == 0, label.contentsMargins().top() << " of " << label.height());
    applyTheme(*qApp, Theme::light);
}

BOOST_AUTO_TEST_CASE(a_name_alone_begins_at_the_right_but_in_a_field_that_is_never_mirrored,
                     *utf::label("REG"))
{
    applyTheme(*qApp, Theme::light);
    QApplication::setLayoutDirection(Qt::RightToLeft);
    QLabel label(ltr(QStringLiteral("N+125-60M-BK")));
    label.setStyleSheet(QStringLiteral("color:black;background:white"));
    label.resize(300, label.fontMetrics().lineSpacing());
    BOOST_TEST_REQUIRE(beginnings(label).size() == 1U);
    BOOST_TEST(beginnings(label).front() <= 3);
    label.setLayoutDirection(Qt::LeftToRight);
    BOOST_TEST(beginnings(label).front() > 100);
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

BOOST_AUTO_TEST_CASE(raw_values_and_spoken_names_carry_no_marks_of_direction, *utf::label("PROP"))
{
    SmallAnswer small;
    PairsModel model;
    model.show(small.answer, small.stock);
    for (int row = 0; row < model.rowCount(); ++row)
        for (const auto role :
             {static_cast<int>(PairsModel::rawRole), static_cast<int>(Qt::AccessibleTextRole)})
            BOOST_TEST(
                !model.index(row, PairsModel::pullColumn).data(role).toString().contains(QChar(0x2066)));
}

BOOST_AUTO_TEST_CASE(prescription_fields_stay_left_to_right_in_a_mirrored_window, *utf::label("PROP"))
{
    QApplication::setLayoutDirection(Qt::RightToLeft);
    {
        OpenDesk desk;
        for (const auto* name :
             {"rightEyeEdit", "leftEyeEdit", "additionEdit", "distancePdEdit", "unaidedRightEdit"})
            BOOST_TEST((named<QLineEdit>(desk.window, name).layoutDirection() == Qt::LeftToRight), name);
        BOOST_TEST((named<QLineEdit>(desk.window, "prescriberEdit").layoutDirection() == Qt::RightToLeft));
    }
    QApplication::setLayoutDirection(Qt::LeftToRight);
}

BOOST_AUTO_TEST_SUITE_END()
