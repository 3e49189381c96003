#pragma once
#include "model/platform.h"
#include <QFutureWatcher>
#include <QObject>
#include <QtConcurrentRun>
#include <utility>

namespace app {

/// Runs `work` on another thread and hands its result to `done` on the thread of `owner`, unless the owner is
/// gone by then.
template<class Work, class Done> void inBackground(QObject *owner, Work work, Done done) {
    using Value = decltype(work());
    auto *watcher = new QFutureWatcher<Value>(owner);
    QObject::connect(watcher, &QFutureWatcherBase::finished, owner,
                     [watcher, done = std::move(done)]() mutable {
                         watcher->deleteLater();
                         done(watcher->future().takeResult());
                     });
    watcher->setFuture(QtConcurrent::run([work = std::move(work)]() mutable {
        Value value = work();
        model::platform::endThreadWork();
        return value;
    }));
}

} // namespace app
