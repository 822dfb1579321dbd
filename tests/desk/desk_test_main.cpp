// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of the desk in one program: a QApplication without a screen, then Boost.Test. A warning of Qt during
// a case fails that case.
#define BOOST_TEST_ALTERNATIVE_INIT_API
#include <boost/test/unit_test.hpp>

#include <QApplication>
#include <QHashFunctions>
#include <QTemporaryDir>

#include <iostream>

namespace
{
bool insideCase = false;

struct Watch : boost::unit_test::test_observer {
    /// After the framework's own, one of which is asked for its state before it was told to begin otherwise.
    int priority() override { return 10; }
    void test_unit_start(const boost::unit_test::test_unit& unit) override
    {
        insideCase = unit.p_type == boost::unit_test::TUT_CASE;
    }
    void test_unit_finish(const boost::unit_test::test_unit&, unsigned long) override { insideCase = false; }
};

void hear(QtMsgType type, const QMessageLogContext&, const QString& text)
{
    const bool harmless = text.contains(QStringLiteral("propagateSizeHints")) ||
                          text.contains(QStringLiteral("XDG_RUNTIME_DIR")) ||
                          text.contains(QStringLiteral("does not support raise"));
    if (type == QtDebugMsg || type == QtInfoMsg || harmless)
        return;
    if (insideCase)
        BOOST_ERROR(text.toStdString());
    else
        std::cerr << text.toStdString() << '\n';
}

bool begin()
{
    static Watch watch;
    boost::unit_test::framework::master_test_suite().p_name.value = "desk";
    boost::unit_test::framework::register_observer(watch);
    return true;
}
} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir home; // settings, drafts and the sample of whoever runs the tests stay as they are
    for (const auto* place : {"XDG_CONFIG_HOME", "XDG_DATA_HOME"})
        if (!qEnvironmentVariableIsSet("QS_TEST_KEEPS_HOME"))
            qputenv(place, home.filePath(QLatin1String(place)).toUtf8());
    qInstallMessageHandler(hear);
    QHashSeed::setDeterministicGlobalSeed(); // glyphs of a PDF stand in the order of a hash table
    qputenv("QT_HASH_SEED", "0");            // in the programs that are started, too
    QApplication application(argc, argv);
    return boost::unit_test::unit_test_main(&begin, argc, argv);
}
