// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of the desk in one program: a QApplication without a screen, then Boost.Test. A warning of Qt during
// a case fails that case.
#define BOOST_TEST_ALTERNATIVE_INIT_API
#include <boost/test/unit_test.hpp>

#include <QApplication>

#include <iostream>

namespace
{
bool insideCase = false;

struct Watch : boost::unit_test::test_observer {
    /// After the framework's own observer of its start: until that one was told, Boost 1.74 reads a flag of
    /// it that nobody has set, and may take the whole program for failed.
    int priority() override { return 1; }
    void test_unit_start(const boost::unit_test::test_unit& unit) override
    {
        insideCase = unit.p_type == boost::unit_test::TUT_CASE;
    }
    void test_unit_finish(const boost::unit_test::test_unit&, unsigned long) override { insideCase = false; }
};

void hear(QtMsgType type, const QMessageLogContext&, const QString& text)
{
    const bool harmless = text.contains(QStringLiteral("propagateSizeHints")) ||
                          text.contains(QStringLiteral("XDG_RUNTIME_DIR"));
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
    qInstallMessageHandler(hear);
    QApplication application(argc, argv);
    return boost::unit_test::unit_test_main(&begin, argc, argv);
}
