// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desk/audit_worker.hpp"

#include "app/session/wording.hpp"

#include <QThread>

namespace quarterstep
{

AuditWorker::AuditWorker(QObject* parent) : QObject(parent)
{
    qRegisterMetaType<std::shared_ptr<quarterstep::AuditCases>>();
}

AuditWorker::~AuditWorker()
{
    stop();
}

void AuditWorker::begin(const std::string& folder, const AuditOptions& options, std::size_t most)
{
    stop();
    cancelled_ = false;
    thread_ = QThread::create([this, folder, options, most] { work(folder, options, most); });
    connect(thread_, &QThread::finished, this, &AuditWorker::clean);
    thread_->start(QThread::LowPriority);
}

void AuditWorker::stop()
{
    if (thread_ == nullptr)
        return;
    cancelled_ = true;
    thread_->wait();
    clean();
}

void AuditWorker::clean()
{
    if (thread_ != nullptr && thread_->isFinished()) {
        thread_->deleteLater();
        thread_ = nullptr;
    }
}

/// On the thread. Whatever goes wrong becomes a signal.
void AuditWorker::work(const std::string& folder, const AuditOptions& options, std::size_t most)
{
    try {
        const auto camp = Camp::open(folder, Ledger::Mode::readOnly);
        Job job;
        job.cancelled = &cancelled_;
        job.done = [this](std::size_t handOvers, std::size_t) {
            Q_EMIT progressed(static_cast<qlonglong>(handOvers));
        };
        auto cases = std::make_shared<AuditCases>(auditCases(camp, options, most, job));
        if (!cancelled_)
            Q_EMIT ended(std::move(cases));
    } catch (const Error& refusal) {
        if (!cancelled_)
            Q_EMIT failed(say(refusal.finding()), QString::fromStdString(refusal.finding().code));
    } catch (const std::exception& problem) {
        if (!cancelled_)
            Q_EMIT failed(QString::fromUtf8(problem.what()), QStringLiteral("unexpected"));
    }
}

} // namespace quarterstep
