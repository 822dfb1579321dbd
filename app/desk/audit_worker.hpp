// SPDX-License-Identifier: GPL-3.0-or-later
// An audit on a thread of its own, with a reader of the ledger of its own, so that the desk goes on. It can
// be stopped.
#pragma once

#include "app/session/audit_cases.hpp"

#include <QObject>

#include <atomic>
#include <memory>

class QThread;

namespace quarterstep
{

class AuditWorker final : public QObject
{
    Q_OBJECT

  public:
    explicit AuditWorker(QObject* parent = nullptr);
    ~AuditWorker() override;

    /// Begins; an audit that runs is stopped first.
    void begin(const std::string& folder, const AuditOptions& options, std::size_t most);
    void stop();
    [[nodiscard]] bool isRunning() const { return thread_ != nullptr; }

  Q_SIGNALS:
    void progressed(qlonglong handOvers);
    void ended(std::shared_ptr<quarterstep::AuditCases> cases);
    void failed(QString words, QString code);

  private:
    void work(const std::string& folder, const AuditOptions& options, std::size_t most);
    void clean();

    QThread* thread_ = nullptr;
    std::atomic<bool> cancelled_{false};
};

} // namespace quarterstep
