// SPDX-License-Identifier: GPL-3.0-or-later
// What comes in from elsewhere and what goes out: two parts of one page. What was brought in before stands in
// the list again when its camp is opened.
#pragma once

#include "app/session/camp.hpp"

#include <QWidget>

#include <memory>

namespace quarterstep
{

class BringInPanel;
class DispensePlace;
class LongWork;
class MessageBar;
class PagesFrame;
class SendOutPanel;

class ExchangePage final : public QWidget
{
    Q_OBJECT

  public:
    ExchangePage(MessageBar& messages, LongWork& work, DispensePlace& dispense, QWidget* parent = nullptr);

    /// Works for this camp from now on; null: none. Reads what was brought into its folder before.
    void take(const Camp* camp);
    enum Part { bringInPart, sendOutPart };
    void showPart(Part part);
    [[nodiscard]] BringInPanel& bringIn() { return *bringIn_; }
    [[nodiscard]] SendOutPanel& sendOut() { return *sendOut_; }
    /// Waits until nothing is read or brought in any more: for pictures.
    void waitForReading();

  Q_SIGNALS:
    void backWanted();
    /// People were brought in.
    void peopleCame();

  private:
    void readKept(const std::vector<std::string>& paths);
    void giveRoomTo(int part);

    LongWork& work_;
    DispensePlace& dispense_;
    const Camp* camp_ = nullptr;
    PagesFrame* parts_;
    BringInPanel* bringIn_;
    SendOutPanel* sendOut_;
};

} // namespace quarterstep
